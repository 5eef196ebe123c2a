import type { AreaShape, DesignRound } from '#practice/design'

/**
 * What a round is from the attackers' side. `chosen`: somebody picks among sizes that are not all of one kind; `mixed`:
 * its areas are not; `alone`: nobody stands against anybody. Keepers do not count.
 */
export const roundKinds = [
  'outnumbering',
  'level',
  'outnumbered',
  'free',
  'chosen',
  'mixed',
  'alone',
] as const
export type RoundKind = (typeof roundKinds)[number]

export function kindOfRound(round: DesignRound): RoundKind {
  if (round.isFreeGame) return 'free'
  const sizes = round.choice?.sizes.map(({ shape }) => shape) ?? []
  const kinds = new Set([...sizes, ...round.stations].map(kindOfShape).filter((kind) => kind !== 'alone'))
  const [only, ...others] = kinds
  if (only === undefined) return 'alone'
  if (others.length === 0) return only
  return sizes.length > 0 ? 'chosen' : 'mixed'
}

/** As the ledger has it: at an area without attackers or without defenders there is no situation. */
export function kindOfShape({
  attack,
  defend,
}: AreaShape): 'outnumbering' | 'level' | 'outnumbered' | 'alone' {
  if (attack === 0 || defend === 0) return 'alone'
  if (attack === defend) return 'level'
  return attack > defend ? 'outnumbering' : 'outnumbered'
}
