import 'server-only'
import type { z } from 'zod'
import { groupBy } from '#common/group-by'
import { figureSums, fromAsked, roleSumRow, type SumFilter, withAsked } from '#data/account-sums'
import { Prisma } from '#data/generated/client'
import type { ClubTx } from '#data/in-club'
import { sql } from '#data/sql'
import { type Role, roles } from '#exposure/column'
import type { SessionKind } from '#fairness/standing'
import { noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

/** What a player got and was due in each role over the sessions asked for: as a member and as a guest apart. */
export type SummedRoles = {
  readonly squadId: SquadId
  readonly playerId: PlayerId
  readonly kind: SessionKind
  readonly isMember: boolean
  readonly roles: Readonly<Record<Role, StandingFigure>>
}

/**
 * The same sums as `sumAccounts`, by role only: a few rows for every player, for pages about many squads at once.
 * Themes and situations of the filter do not matter here.
 */
export async function sumRoles(tx: ClubTx, filter: SumFilter): Promise<readonly SummedRoles[]> {
  const rows = await sql(
    tx,
    roleSumRow,
    Prisma.sql`${withAsked(tx, filter)}
      select asked."squadId", e."playerId", asked.kind::text, e."isMember", e.role::text, ${figureSums}
      ${fromAsked(tx)}
      group by asked."squadId", e."playerId", asked.kind, e."isMember", e.role
      order by asked."squadId", e."playerId", asked.kind, e."isMember", e.role`,
  )
  const players = groupBy(rows, (row) => [row.squadId, row.playerId, row.kind, row.isMember].join(' '))
  return [...players.values()].flatMap(([first, ...rest]) => (first ? [toRoles([first, ...rest])] : []))
}

type Row = z.infer<typeof roleSumRow>

function toRoles(rows: readonly [Row, ...Row[]]): SummedRoles {
  const { squadId, playerId, kind, isMember } = rows[0]
  const figures = new Map<Role, StandingFigure>(rows.map(({ role, ...row }) => [role, toFigure(row)]))
  // What agreements take off the dues of playing becomes due as waiting.
  const given = roles
    .filter((role) => role !== 'rest')
    .map((role) => figures.get(role) ?? noFigure)
    .reduce(
      (sum, one) => ({
        seconds: sum.seconds + one.fairSeconds - one.dueSeconds,
        turns: sum.turns + one.fairTurns - one.dueTurns,
      }),
      { seconds: 0, turns: 0 },
    )
  const rest = figures.get('rest') ?? noFigure
  return {
    squadId,
    playerId,
    kind,
    isMember,
    roles: {
      attack: figures.get('attack') ?? noFigure,
      defend: figures.get('defend') ?? noFigure,
      keep: figures.get('keep') ?? noFigure,
      rest: { ...rest, dueSeconds: rest.dueSeconds + given.seconds, dueTurns: rest.dueTurns + given.turns },
    },
  }
}

function toFigure(row: StandingFigure): StandingFigure {
  const { seconds, turns, fairSeconds, fairTurns, fullFairSeconds, openGoalFairSeconds } = row
  const { dueSeconds, dueTurns, membersMeanSeconds } = row
  return {
    seconds,
    turns,
    fairSeconds,
    fairTurns,
    fullFairSeconds,
    openGoalFairSeconds,
    dueSeconds,
    dueTurns,
    membersMeanSeconds,
  }
}
