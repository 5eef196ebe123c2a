import type { ProgrammeEntry, ThemeId } from '#themes/theme'

/** A programme's wish for a theme with when it may come. Weeks are those of the term: the one it begins in is 1. */
export type ProgrammeRule = ProgrammeEntry & {
  readonly firstWeek: number | null
  readonly lastWeek: number | null
  /** Not before this theme has been met. */
  readonly afterThemeId: ThemeId | null
  /** It comes back after so many weeks at the earliest. */
  readonly leastWeeksBetween: number | null
  /** It comes back after so many weeks at the latest. */
  readonly mostWeeksBetween: number | null
}

/** A wish without any rule: it may come in any week. */
export const noRule: Omit<ProgrammeRule, 'themeId' | 'wishedShare'> = {
  firstWeek: null,
  lastWeek: null,
  afterThemeId: null,
  leastWeeksBetween: null,
  mostWeeksBetween: null,
}

/** Weeks of a term, both belonging to it, that are kept for one theme and those under it. */
export type ProgrammeBlock = {
  readonly themeId: ThemeId
  readonly firstWeek: number
  readonly lastWeek: number
}
