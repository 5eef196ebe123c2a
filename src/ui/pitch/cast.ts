import type { PitchState } from '#pitch/pitch-state'
import type { PracticePlan } from '#planning/practice-plan'
import { shortNames } from '#planning/short-names'
import type { SeatRole, Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Names and bibs for the cards of a practice: first names, told apart, so that they can be huge. */
export type Cast = {
  readonly nameOf: (playerId: PlayerId) => string
  /** Null: neutral, or there are no sides. */
  readonly sideOf: (playerId: PlayerId) => 0 | 1 | null
  /** Colours of the bibs; null: no sides. */
  readonly bibs: readonly [string, string] | null
}

export function castOf(plan: PracticePlan | null, players: PitchState['players']): Cast {
  const names = shortNames(players.map(({ playerId, name }) => ({ id: playerId, name })))
  const sides = new Map((plan?.players ?? []).map(({ playerId, side }) => [playerId, side]))
  return {
    nameOf: (playerId) => names.get(playerId) || 'Guest',
    sideOf: (playerId) => sides.get(playerId) ?? null,
    bibs: plan?.design.sides?.names ?? null,
  }
}

/** The side whose bibs play a role at an area; null: nobody's, or both sides'. */
export function sideOfRole(station: Station, role: SeatRole, { bibs, sideOf }: Cast): 0 | 1 | null {
  if (!bibs || role === 'keep') return null
  const sides = new Set(station[role].map(sideOf).filter((side) => side !== null))
  const [only] = sides
  return sides.size === 1 ? (only ?? null) : null
}
