import { gapSeconds } from '#fairness/gap'
import { noise } from '#fairness/noise'
import type { StandingFigure } from '#fairness/standing-figure'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Policy } from '#squad/policy'

/** The side of the band that a figure is on. It raises nothing by itself. */
export type Status = 'within' | 'short' | 'over'

/** Of sums so large that the noise of seconds is finer than a number can be. */
const noiseShare = 1e-12

/** Short when the gap is below −tolerance, over when above it; on the edge is within. Decided on unrounded seconds. */
export function statusOf(
  figure: { readonly seconds: number; readonly fairSeconds: number },
  policy: Pick<Policy, 'toleranceSeconds' | 'toleranceShare'>,
): Status {
  const gap = gapSeconds(figure)
  const edge = toleranceSeconds(policy, figure.fairSeconds) + Math.max(noise, noiseShare * figure.fairSeconds)
  if (gap < -edge) return 'short'
  return gap > edge ? 'over' : 'within'
}

/** The same of what is due after agreements. */
export function dueStatusOf(
  { seconds, dueSeconds }: Pick<StandingFigure, 'seconds' | 'dueSeconds'>,
  policy: Pick<Policy, 'toleranceSeconds' | 'toleranceShare'>,
): Status {
  return statusOf({ seconds, fairSeconds: dueSeconds }, policy)
}
