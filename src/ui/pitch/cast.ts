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

/** `turns`: as they stand after every new plan; there a new face has got its side. */
export function castOf(
  plan: PracticePlan | null,
  players: PitchState['players'],
  turns: PitchState['turns'] = [],
): Cast {
  const names = shortNames(players.map(({ playerId, name }) => ({ id: playerId, name })))
  const sides = new Map((plan?.players ?? []).map(({ playerId, side }) => [playerId, side]))
  if (plan?.design.sides)
    for (const { playerId } of players)
      if (!sides.has(playerId)) sides.set(playerId, sideAmong(playerId, { turns, sides }))
  return {
    nameOf: (playerId) => names.get(playerId) || 'Guest',
    sideOf: (playerId) => sides.get(playerId) ?? null,
    bibs: plan?.design.sides?.names ?? null,
  }
}

/** The side of those with whom somebody attacks or defends, in the last plan; null: of both, or of none. */
function sideAmong(
  playerId: PlayerId,
  { turns, sides }: { turns: PitchState['turns']; sides: ReadonlyMap<PlayerId, 0 | 1 | null> },
): 0 | 1 | null {
  const found = new Set<0 | 1>()
  for (const { attack, defend } of turns.flatMap(({ stations }) => stations))
    for (const [own, others] of [
      [attack, defend],
      [defend, attack],
    ] as const) {
      if (!own.includes(playerId)) continue
      for (const id of own) for (const side of known(sides.get(id))) found.add(side)
      for (const id of others) for (const side of known(sides.get(id))) found.add(side === 0 ? 1 : 0)
    }
  const [only] = found
  return found.size === 1 ? (only ?? null) : null
}

function known(side: 0 | 1 | null | undefined): readonly (0 | 1)[] {
  return side === 0 || side === 1 ? [side] : []
}

/** The side whose bibs play a role at an area; null: nobody's, or both sides'. */
export function sideOfRole(station: Station, role: SeatRole, { bibs, sideOf }: Cast): 0 | 1 | null {
  if (!bibs || role === 'keep') return null
  const sides = new Set(station[role].map(sideOf).filter((side) => side !== null))
  const [only] = sides
  return sides.size === 1 ? (only ?? null) : null
}
