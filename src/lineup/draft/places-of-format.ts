import type { LinePlaces, MatchFormat } from '#match/format/match-format'

/** The places to begin with: of the format's first shape, else spread over back, middle and forward. */
export function placesOfFormat(format: Pick<MatchFormat, 'shapes' | 'aSide' | 'hasKeeper'>): LinePlaces {
  return format.shapes[0]?.places ?? spreadPlaces(format)
}

/** A shape for a number that no shape is given for: the middle takes what does not come out even. */
export function spreadPlaces({ aSide, hasKeeper }: Pick<MatchFormat, 'aSide' | 'hasKeeper'>): LinePlaces {
  const keeper = hasKeeper && aSide > 0 ? 1 : 0
  const field = Math.max(0, aSide - keeper)
  const back = Math.floor(field / 3)
  const forward = Math.floor((field - back) / 3)
  return { keeper, back, middle: field - back - forward, forward }
}

/** "2-3-1", keepers left out. */
export function shapeName({ back, middle, forward }: LinePlaces): string {
  return [back, middle, forward].join('-')
}
