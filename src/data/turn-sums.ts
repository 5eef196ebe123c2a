import 'server-only'
import { z } from 'zod'
import { seatRoleOf } from '#data/enums'
import { Prisma } from '#data/generated/client'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { SquadDays } from '#data/sessions'
import { sql } from '#data/sql'
import type { PassedTurn } from '#fairness/passed'
import type { PlayerId } from '#squad/player'

/** Events that stand of a squad's written practices, as `TurnEvent` e of `Session` s. */
function standingEvents(tx: ClubTx, at: SquadDays): Prisma.Sql {
  const squadId = isId(at.squadId) ? at.squadId : null
  return Prisma.sql`
    from "Session" s join "TurnEvent" e on e."clubId" = s."clubId" and e."sessionId" = s.id
    where s."clubId" = ${tx.clubId}::uuid and s."squadId" = ${squadId}::uuid
      and s.day between ${at.from}::date and ${at.to}::date and s."cancelledAt" is null and s.written <> 'notWritten'
      and not exists (select from "TurnEvent" v where v."clubId" = e."clubId" and v."voidsId" = e.id)`
}

const passedRow = z.object({
  sessionId: z.string(),
  playerId: z.string(),
  role: z.enum(seatRoleOf),
  lengthSeconds: z.int(),
})

/** Every time a player was offered a place and passed, in the order of the sessions and of writing. */
export async function listPassed(tx: ClubTx, at: SquadDays): Promise<readonly PassedTurn[]> {
  return sql(
    tx,
    passedRow,
    Prisma.sql`
      select e."sessionId", e."playerId", e.role::text, e."lengthSeconds"
      ${standingEvents(tx, at)} and e.kind = 'passed'
      order by s.day, s."startsAt" nulls first, s.id, e.seq`,
  )
}

/** Half of the written practice turns are no longer than this; null without any. */
export async function findMedianTurnSeconds(tx: ClubTx, at: SquadDays): Promise<number | null> {
  const [row] = await sql(
    tx,
    z.object({ median: z.number().nullable() }),
    Prisma.sql`
      select percentile_cont(0.5) within group (order by (e."endSecond" - e."startSecond")::float8) as median
      ${standingEvents(tx, at)} and e.kind = 'turn'`,
  )
  return row?.median ?? null
}

/** How often a player was on the side that got to choose, of the choice turns it had a place in. */
export type ChoiceCount = {
  readonly playerId: PlayerId
  readonly chose: number
  readonly choiceTurns: number
}

/** By player; players who had no place in a choice turn are left out. */
export async function countChoices(tx: ClubTx, at: SquadDays): Promise<readonly ChoiceCount[]> {
  return sql(
    tx,
    z.object({ playerId: z.string(), chose: z.int(), choiceTurns: z.int() }),
    Prisma.sql`
      select p."playerId", (count(*) filter (where p.role::text = choice."chosenBy"::text))::int as chose,
        count(*)::int as "choiceTurns"
      from (select e."clubId", e.id, e."chosenBy" ${standingEvents(tx, at)} and e."chosenBy" is not null) choice
        join "TurnSeat" p on p."clubId" = choice."clubId" and p."turnEventId" = choice.id
      group by p."playerId" order by p."playerId"`,
  )
}
