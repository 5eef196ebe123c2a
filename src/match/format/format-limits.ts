/** What is larger is a mistake, or meant to be a burden. */
export const formatLimits = {
  aSide: [3, 11],
  periods: 12,
  periodSeconds: [60, 3600],
  shapes: 20,
  letters: 600,
} as const
