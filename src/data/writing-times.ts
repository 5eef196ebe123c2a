import 'server-only'
import { z } from 'zod'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'

/** A moment at which turns or the register of a practice were written or corrected, and by whom. */
export type WritingTime = {
  readonly at: Date
  readonly byName: string | null
  /** Turns or passes, not only the register. */
  readonly ofTurns: boolean
}

const row = z.object({ at: z.date(), byName: z.string().nullable(), ofTurns: z.boolean() })

/** When a practice was written in, in order of time: everything of one transaction has one time. */
export async function listWritingTimes(tx: ClubTx, sessionId: string): Promise<readonly WritingTime[]> {
  if (!isId(sessionId)) return []
  const at = Prisma.sql`where "clubId" = ${tx.clubId}::uuid and "sessionId" = ${sessionId}::uuid`
  return sql(
    tx,
    row,
    Prisma.sql`
      with written as (
        select "recordedAt" as at, "recordedById" as by, true as turns from "TurnEvent" ${at}
        union all select "recordedAt", "recordedById", false from "RegisterLine" ${at}
        union all select "voidedAt", "voidedById", false from "RegisterLine" ${at} and "voidedAt" is not null
      )
      select written.at, max(p.name) as "byName", bool_or(written.turns) as "ofTurns"
      from written left join "Person" p on p."clubId" = ${tx.clubId}::uuid and p.id = written.by
      group by written.at order by written.at`,
  )
}
