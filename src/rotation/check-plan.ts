import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import type { Rule, RuleBreak } from '#rotation/rule'
import { apartRule } from '#rotation/rules/apart-rule'
import { fixedRule } from '#rotation/rules/fixed-rule'
import { keepersRule } from '#rotation/rules/keepers-rule'
import { keepersStayRule } from '#rotation/rules/keepers-stay-rule'
import { mostTurnsRule } from '#rotation/rules/most-turns-rule'
import { neverRestsAloneRule } from '#rotation/rules/never-rests-alone-rule'
import { presenceRule } from '#rotation/rules/presence-rule'
import { restLimitRule } from '#rotation/rules/rest-limit-rule'
import { restsAfterTurnRule } from '#rotation/rules/rests-after-turn-rule'
import { seatsRule } from '#rotation/rules/seats-rule'
import { sidesRule } from '#rotation/rules/sides-rule'

const rules: readonly Rule[] = [
  presenceRule,
  seatsRule,
  keepersRule,
  sidesRule,
  keepersStayRule,
  apartRule,
  fixedRule,
  restLimitRule,
  mostTurnsRule,
  restsAfterTurnRule,
  neverRestsAloneRule,
]

/** Every hard rule that a plan breaks; none: the plan may be shown. Knows nothing of how plans are made. */
export function checkPlan(problem: RotationProblem, plan: RotationPlan): readonly RuleBreak[] {
  return rules.flatMap((rule) => rule(problem, plan))
}
