import type { FlagRule } from '#fairness/flags/flag-rule'
import { rule as attackShort } from '#fairness/flags/rules/attack-short'
import { rule as defendShort } from '#fairness/flags/rules/defend-short'
import { rule as goalShareOver } from '#fairness/flags/rules/goal-share-over'
import { rule as keepOver } from '#fairness/flags/rules/keep-over'
import { rule as keepShort } from '#fairness/flags/rules/keep-short'
import { rule as keptUnwillingly } from '#fairness/flags/rules/kept-unwillingly'
import { rule as matchGoalOver } from '#fairness/flags/rules/match-goal-over'
import { rule as matchMinutesShort } from '#fairness/flags/rules/match-minutes-short'
import { rule as matchOffOver } from '#fairness/flags/rules/match-off-over'
import { rule as matchShareLeast } from '#fairness/flags/rules/match-share-least'
import { rule as passedRunning } from '#fairness/flags/rules/passed-running'
import { rule as restOver } from '#fairness/flags/rules/rest-over'
import { rule as situationNeverMet } from '#fairness/flags/rules/situation-never-met'
import { rule as situationShort } from '#fairness/flags/rules/situation-short'
import { rule as themeNeverPlayed } from '#fairness/flags/rules/theme-never-played'
import { rule as themeShort } from '#fairness/flags/rules/theme-short'
import { rule as waitedInARow } from '#fairness/flags/rules/waited-in-a-row'

/** Every flag rule, by file name. Made by `npm run generate` from the files in rules/. */
export const flagRules = [
  attackShort,
  defendShort,
  goalShareOver,
  keepOver,
  keepShort,
  keptUnwillingly,
  matchGoalOver,
  matchMinutesShort,
  matchOffOver,
  matchShareLeast,
  passedRunning,
  restOver,
  situationNeverMet,
  situationShort,
  themeNeverPlayed,
  themeShort,
  waitedInARow,
] as const satisfies readonly FlagRule[]
