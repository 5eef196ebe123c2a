import type { Day } from '#common/time'
import type { DesignId } from '#practice/design'
import type { ThemeId } from '#themes/theme'

/** What is planned for one practice. Themes and designs may have gone since: then it counts for nothing. */
export type PlannedPractice = {
  readonly sessionId: string
  readonly themeId: ThemeId
  readonly designId: DesignId
  /** The coach holds it: a new plan leaves it as it is. */
  readonly isHeld: boolean
}

/** The plan of a term as it is kept. It names no child: who gains by it is reckoned from the book whenever it is read. */
export type TermPlan = {
  readonly practices: readonly PlannedPractice[]
  /** The book's last written day when it was made; null: nothing was written. */
  readonly asOf: Day | null
}

/** So many of the next practices are firm; the rest is a sketch, planned anew after each practice. Common practice, no source. */
export const firmPractices = 4
