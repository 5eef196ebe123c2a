import type { AheadRule } from '#ahead/rule'
import { after } from '#ahead/rules/after'
import { block } from '#ahead/rules/block'
import { designRest } from '#ahead/rules/design-rest'
import { firstWeek } from '#ahead/rules/first-week'
import { held } from '#ahead/rules/held'
import { lastWeek } from '#ahead/rules/last-week'
import { leastWeeksBetween } from '#ahead/rules/least-weeks-between'
import { mostWeeksBetween } from '#ahead/rules/most-weeks-between'
import { offered } from '#ahead/rules/offered'

/** Every hard rule of the weeks ahead. */
export const aheadRules: readonly AheadRule[] = [
  offered,
  held,
  firstWeek,
  lastWeek,
  after,
  leastWeeksBetween,
  mostWeeksBetween,
  block,
  designRest,
]
