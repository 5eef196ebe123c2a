import { weekRule } from '#ahead/rules/week-rule'

/** A theme does not come before its first week. */
export const firstWeek = weekRule(
  'firstWeek',
  (theme, week) => theme.firstWeek !== null && week < theme.firstWeek,
)
