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

/**
 * Written practice turns with a number within their session, as `part`: one for the parts of one turn. A part goes on
 * with the turn before it only where it begins as that one ends.
 */
function numberedTurns(tx: ClubTx, at: SquadDays): Prisma.Sql {
  return Prisma.sql`(
    select t.*, sum(case when t."continuesTurn" and t.before = t."startSecond" then 0 else 1 end)
      over (partition by t."sessionId" order by t."startSecond") as turn
    from (
      select e."clubId", e.id, e."sessionId", e."startSecond", e."endSecond", e."continuesTurn", e."chosenBy",
        lag(e."endSecond") over (partition by e."sessionId" order by e."startSecond") as before
      ${standingEvents(tx, at)} and e.kind = 'turn'
    ) t
  ) part`
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
      select percentile_cont(0.5) within group (order by whole.length) as median
      from (
        select (max(part."endSecond") - min(part."startSecond"))::float8 as length
        from ${numberedTurns(tx, at)} group by part."sessionId", part.turn
      ) whole`,
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
      select whole."playerId", (count(*) filter (where whole.chose))::int as chose, count(*)::int as "choiceTurns"
      from (
        select p."playerId", bool_or(p.role::text = part."chosenBy"::text) as chose
        from ${numberedTurns(tx, at)}
          join "TurnSeat" p on p."clubId" = part."clubId" and p."turnEventId" = part.id
        where part."chosenBy" is not null
        group by p."playerId", part."sessionId", part.turn
      ) whole
      group by whole."playerId" order by whole."playerId"`,
  )
}
