import type { LinePlaces } from '#match/format/match-format'

/** On the pitch at once, keeper included. */
export function placesInAll({ keeper, back, middle, forward }: LinePlaces): number {
  return keeper + back + middle + forward
}
