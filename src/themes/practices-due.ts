import { apportionBySainteLague } from '#common/apportion'
import type { ProgrammeEntry, ThemeId } from '#themes/theme'

// A third three times is a whole.
const hair = 1e-9

/**
 * How many practices of each theme are due after so many practices of a term. By Sainte-Laguë, so that one more practice
 * never takes one away from a theme. What the wishes leave free stays free; wishes of more than a whole mean that a
 * practice meets several themes.
 */
export function practicesDue(
  programme: readonly ProgrammeEntry[],
  practicesSoFar: number,
): ReadonlyMap<ThemeId, number> {
  const wished = programme.reduce((sum, entry) => sum + entry.wishedShare, 0)
  if (wished <= 0) return new Map(programme.map((entry) => [entry.themeId, 0]))
  const free = Math.max(0, 1 - wished)
  const due = apportionBySainteLague({
    weights: [...programme.map((entry) => entry.wishedShare), free > hair ? free : 0],
    seats: Math.floor(practicesSoFar * Math.max(1, wished) + hair),
  })
  return new Map(programme.map((entry, index) => [entry.themeId, due[index] as number]))
}
