import { gapSeconds } from '#fairness/gap'
import { toleranceSeconds } from '#fairness/tolerance'
import type { Policy } from '#squad/policy'

/** The side of the band that a figure is on. It raises nothing by itself. */
export type Status = 'within' | 'short' | 'over'

// Sums of thirds and sevenths of whole seconds come out a hair beside the exact number, which may lie on the very edge.
const noiseSeconds = 1e-6
const noiseShare = 1e-12

/** Short when the gap is below −tolerance, over when above it; on the edge is within. Decided on unrounded seconds. */
export function statusOf(
  figure: { readonly seconds: number; readonly fairSeconds: number },
  policy: Pick<Policy, 'toleranceSeconds' | 'toleranceShare'>,
): Status {
  const gap = gapSeconds(figure)
  const edge =
    toleranceSeconds(policy, figure.fairSeconds) + Math.max(noiseSeconds, noiseShare * figure.fairSeconds)
  if (gap < -edge) return 'short'
  return gap > edge ? 'over' : 'within'
}
