import { weekRule } from '#ahead/rules/week-rule'

/** A theme does not come after its last week. */
export const lastWeek = weekRule(
  'lastWeek',
  (theme, week) => theme.lastWeek !== null && week > theme.lastWeek,
)
