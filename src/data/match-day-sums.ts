import 'server-only'
import { z } from 'zod'
import type { Day } from '#common/time'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import type { PlayedDay } from '#fairness/matches/long-days'
import type { PlayerId } from '#squad/player'

const playedDay = z.object({
  playerId: z.string(),
  day: z.string(),
  matches: z.int(),
  playedSeconds: z.number(),
})

/** What these players played in the matches of each day, in whatever squad, by day and player. Both days included. */
export async function sumMatchDays(
  tx: ClubTx,
  of: {
    readonly playerIds: readonly PlayerId[]
    readonly from: Day
    readonly to: Day
    /** A match that is left out. */
    readonly butFor?: string
  },
): Promise<readonly PlayedDay[]> {
  const butFor = of.butFor && isId(of.butFor) ? Prisma.sql`and s.id <> ${of.butFor}::uuid` : Prisma.empty
  return sql(
    tx,
    playedDay,
    Prisma.sql`
      select e."playerId", s.day::text, count(distinct s.id)::int as matches, sum(e.seconds) as "playedSeconds"
      from "Session" s join "Exposure" e on e."clubId" = s."clubId" and e."sessionId" = s.id
      where s."clubId" = ${tx.clubId}::uuid and s.kind = 'match' and s."cancelledAt" is null
        and s.day between ${of.from}::date and ${of.to}::date ${butFor}
        and e."playerId" = any(${of.playerIds.filter(isId)}::uuid[]) and e.role <> 'rest' and e.seconds > 0
      group by e."playerId", s.day order by s.day, e."playerId"`,
  )
}
