import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpFault, LineUpRule } from '#lineup/rule'
import { apartRule } from '#lineup/rules/apart-rule'
import { fixedRule } from '#lineup/rules/fixed-rule'
import { keeperForPeriodRule } from '#lineup/rules/keeper-for-period-rule'
import { keeperRule } from '#lineup/rules/keeper-rule'
import { leastSpellRule } from '#lineup/rules/least-spell-rule'
import { longestOffRule } from '#lineup/rules/longest-off-rule'
import { longestSpellRule } from '#lineup/rules/longest-spell-rule'
import { mayReturnRule } from '#lineup/rules/may-return-rule'
import { mostChangesRule } from '#lineup/rules/most-changes-rule'
import { mostKeeperPeriodsRule } from '#lineup/rules/most-keeper-periods-rule'
import { mostSecondsRule } from '#lineup/rules/most-seconds-rule'
import { mostSubstitutionsRule } from '#lineup/rules/most-substitutions-rule'
import { notYetRule } from '#lineup/rules/not-yet-rule'
import { placesRule } from '#lineup/rules/places-rule'
import { presenceRule } from '#lineup/rules/presence-rule'

const rules: readonly LineUpRule[] = [
  placesRule,
  keeperRule,
  presenceRule,
  mostSecondsRule,
  keeperForPeriodRule,
  mostKeeperPeriodsRule,
  leastSpellRule,
  longestSpellRule,
  longestOffRule,
  mostChangesRule,
  mostSubstitutionsRule,
  mayReturnRule,
  apartRule,
  fixedRule,
  notYetRule,
]

/** Every hard rule that a line-up breaks; none: it may be shown. Knows nothing of how line-ups are made. */
export function checkLineUp(problem: LineUpProblem, plan: LineUpPlan): readonly LineUpFault[] {
  return rules.flatMap((rule) => rule(problem, plan))
}
