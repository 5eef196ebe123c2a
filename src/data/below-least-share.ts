import 'server-only'
import { z } from 'zod'
import type { Day, Seconds } from '#common/time'
import { withAsked } from '#data/account-sums'
import { attendanceOf, namesOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import type { Attendance } from '#fairness/account'
import { noise } from '#fairness/noise'
import type { SquadId } from '#squad/squad'
import { waysWritten } from '#squad/written'

/** A time that a member played less of a match than a part of the time it was there for. */
export type BelowLeastShare = {
  readonly squadId: SquadId
  readonly sessionId: string
  readonly attendance: Attendance
  /** Playing time for which it was there, and could play. */
  readonly thereSeconds: Seconds
  /** The longest that anybody was there: of the match, where somebody was there for all of it. */
  readonly wholeSeconds: Seconds
  /** Fewer turns were agreed for the day. */
  readonly isAgreed: boolean
}

const below = z.object({
  squadId: z.string(),
  sessionId: z.string(),
  attendance: z.enum(namesOf(attendanceOf)),
  thereSeconds: z.number(),
  wholeSeconds: z.number(),
  isAgreed: z.boolean(),
})

/** In the written matches of these squads, each with its own least share. One question, whatever the number of squads. */
export async function listBelowLeastShare(
  tx: ClubTx,
  of: {
    readonly leastShares: ReadonlyMap<SquadId, number>
    readonly from: Day
    readonly to: Day
  },
): Promise<readonly BelowLeastShare[]> {
  const squadIds = [...of.leastShares.keys()]
  const filter = { squadIds, from: of.from, to: of.to, kinds: ['match'], writtens: waysWritten } as const
  return sql(
    tx,
    below,
    Prisma.sql`${withAsked(tx, filter)}, least as (
        select * from unnest(${squadIds}::uuid[], ${[...of.leastShares.values()]}::float8[]) as l ("squadId", share)
      ), played as materialized (
        select e."sessionId", e."playerId", sum(e.seconds) as seconds
        from asked join "Exposure" e on e."clubId" = ${tx.clubId}::uuid and e."sessionId" = asked.id
        where e.role <> 'rest' group by 1, 2
      ), whole as materialized (
        select w."sessionId", max(w."liveSeconds") as seconds
        from asked join "SessionPresence" w on w."clubId" = ${tx.clubId}::uuid and w."sessionId" = asked.id
        group by 1
      )
      select asked."squadId", asked.id as "sessionId", p.attendance::text,
        p."liveSeconds" as "thereSeconds", whole.seconds as "wholeSeconds", coalesce(g.share, 1) < 1 as "isAgreed"
      from asked join least l on l."squadId" = asked."squadId"
        join "SessionPresence" p on p."clubId" = ${tx.clubId}::uuid and p."sessionId" = asked.id
        join whole on whole."sessionId" = asked.id
        left join played on played."sessionId" = asked.id and played."playerId" = p."playerId"
        left join agreed g on g.id = asked.id and g."playerId" = p."playerId"
      where p."isMember" and l.share * p."liveSeconds" - coalesce(played.seconds, 0) > ${noise}
      order by asked.day, asked.id, p."playerId"`,
  )
}
