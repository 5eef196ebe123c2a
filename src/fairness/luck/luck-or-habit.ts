import { adjustedByBenjaminiHochberg } from '#common/statistics/benjamini-hochberg'
import { chanceOfGap } from '#fairness/luck/chance-of-gap'
import { type LuckRole, luckRoles } from '#fairness/luck/draw'
import { drawMoments } from '#fairness/luck/draw-moments'
import { drawOfPractices, type LuckPractice } from '#fairness/luck/draw-of-practices'
import { type SquadLuck, squadLuck } from '#fairness/luck/squad-luck'
import { noise } from '#fairness/noise'
import type { PlayerId } from '#squad/player'

/** A player's turns in a role beside those of a fair draw. */
export type PlayerLuck = {
  readonly playerId: PlayerId
  readonly role: LuckRole
  readonly turns: number
  readonly drawnTurns: number
  readonly pValue: number
  /** The same, adjusted for how many players and roles were looked at. */
  readonly adjusted: number
}

export type LuckOrHabit = {
  readonly practices: number
  readonly turns: number
  readonly leftOut: number
  /** Null: nothing there that a draw could have dealt otherwise. */
  readonly squad: SquadLuck | null
  /** Players and roles looked at, in the order of players; null: too few turns were written as they happened. */
  readonly players: readonly PlayerLuck[] | null
}

/** Of those found to be more than luck, one in twenty at most is luck after all, on average. Common practice, no source. */
export const foundUpTo = 0.05

/**
 * Would a fair draw have given gaps like these? Turns are counted, not minutes. The squad is answered first; single
 * players only where `single` says so. It tells a habit from chance and nothing of why.
 */
export function luckOrHabit(
  practices: readonly LuckPractice[],
  {
    tested,
    single,
    seed,
  }: { readonly tested: readonly PlayerId[]; readonly single: boolean; readonly seed: number },
): LuckOrHabit {
  const draw = drawOfPractices(practices)
  const moments = drawMoments(draw)
  const players = tested.map((id) => draw.players.indexOf(id)).filter((player) => player >= 0)
  const columns = players.flatMap((player) =>
    luckRoles.map((role, at) => ({ player, role, at: player * luckRoles.length + at })),
  )
  const moving = columns.filter(({ at }) => (moments.variance[at] ?? 0) > noise)
  const counts = { practices: practices.length, turns: draw.turns, leftOut: draw.leftOut }
  if (moving.length === 0) return { ...counts, squad: null, players: single ? [] : null }
  const squad = squadLuck(draw, { moments, columns: moving.map(({ at }) => at), seed })
  if (!single) return { ...counts, squad, players: null }
  const pValues = moving.map((column) => chanceOfGap(draw, column))
  const adjusted = adjustedByBenjaminiHochberg(pValues)
  return {
    ...counts,
    squad,
    players: moving.map(({ player, role, at }, index) => ({
      playerId: draw.players[player] ?? '',
      role,
      turns: moments.had[at] ?? 0,
      drawnTurns: moments.mean[at] ?? 0,
      pValue: pValues[index] ?? 1,
      adjusted: adjusted[index] ?? 1,
    })),
  }
}
