import type { Hits, Interval } from '#common/statistics/interval'
import { binomialAtMost } from './binomial'

/**
 * Where the true part of hits lies, at least as surely as `level` says, however few were tried: what is outside would have
 * given so many hits, or fewer (more), in less than half of what is left of the level.
 * Source: C. J. Clopper & E. S. Pearson, "The use of confidence or fiducial limits", Biometrika 26 (1934) 404-413.
 */
export function clopperPearsonInterval({ hits, tries }: Hits, level = 0.95): Interval {
  const tail = (1 - level) / 2
  return {
    low: hits <= 0 ? 0 : edge((chance) => 1 - binomialAtMost(hits - 1, { tries, chance }) < tail),
    high: hits >= tries ? 1 : edge((chance) => binomialAtMost(hits, { tries, chance }) > tail),
  }
}

/** The number from 0 to 1 up to which something is true, by halving. */
function edge(isBelow: (chance: number) => boolean): number {
  let [low, high] = [0, 1]
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2
    if (isBelow(middle)) low = middle
    else high = middle
  }
  return (low + high) / 2
}
