import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'

/** A moment at which what was played, or the register, was written or corrected, and by whom. */
export type WritingTime = {
  readonly at: Date
  readonly byName: string | null
  /** Turns, passes or spells, not only the register. */
  readonly ofPlay: boolean
}

const row = z.object({ at: z.date(), byName: z.string().nullable(), ofPlay: z.boolean() })

/** When a practice or match was written in, in order of time: everything of one transaction has one time. */
export async function listWritingTimes(tx: ClubTx, sessionId: string): Promise<readonly WritingTime[]> {
  if (!isId(sessionId)) return []
  const at = Prisma.sql`where "clubId" = ${tx.clubId}::uuid and "sessionId" = ${sessionId}::uuid`
  return sql(
    tx,
    row,
    Prisma.sql`
      with written as (
        select "recordedAt" as at, "recordedById" as by, true as play from "TurnEvent" ${at}
        union all select "recordedAt", "recordedById", true from "MatchSpell" ${at}
        union all select "voidedAt", "voidedById", true from "MatchSpell" ${at} and "voidedAt" is not null
        union all select "recordedAt", "recordedById", false from "RegisterLine" ${at}
        union all select "voidedAt", "voidedById", false from "RegisterLine" ${at} and "voidedAt" is not null
      )
      select written.at, max(p.name) as "byName", bool_or(written.play) as "ofPlay"
      from written left join "Person" p on p."clubId" = ${tx.clubId}::uuid and p.id = written.by
      group by written.at order by written.at`,
  )
}
