import 'server-only'
import { z } from 'zod'
import { type SumFilter, sessionsOf } from '#data/account-sums'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import type { SquadId } from '#squad/squad'

/** Sessions of a squad that somebody led who was not its coach on the day. */
export type CoveredSessions = {
  readonly squadId: SquadId
  readonly personName: string
  readonly sessions: number
}

const row = z.object({ squadId: z.string(), personName: z.string(), sessions: z.int() })

/** By squad, then by the name of who covered. */
export async function countCovered(tx: ClubTx, filter: SumFilter): Promise<readonly CoveredSessions[]> {
  return sql(
    tx,
    row,
    Prisma.sql`
      select s."squadId", p.name as "personName", count(*)::int as sessions
      from "Session" s join "Person" p on p."clubId" = s."clubId" and p.id = s."ledById"
      where ${sessionsOf(tx, filter)} and not exists (
        select from "SquadCoach" c
        where c."clubId" = s."clubId" and c."squadId" = s."squadId" and c."personId" = s."ledById" and c.kind = 'coach'
          and c."firstDay" <= s.day and (c."lastDay" is null or c."lastDay" >= s.day))
      group by s."squadId", p.id, p.name
      order by s."squadId", p.name, p.id`,
  )
}
