import { countWord } from '#common/count-word'
import { proofOf } from '#common/proof'
import type { PlanProof } from '#planning/practice-plan'
import { type ProvenWithin, provenWithin } from '#planning/proven-within'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'

/** A plan's worth against what is known of the best, with the sentence that says so. */
export function proofOfPlan(
  problem: RotationProblem,
  of: { readonly plan: RotationPlan; readonly bound: number; readonly restLimitUsed: number | null },
): PlanProof {
  const { value, bound, proven } = proofOf(planValues(problem, of.plan).unfairness, of.bound)
  const players = problem.players.filter(({ present }) => present.some((isThere) => isThere)).length
  const sentence = sayProof({ value, bound, proven, players, within: provenWithin(problem) })
  return { sentence, value, bound, proven, restLimitUsed: of.restLimitUsed }
}

/** Further from the bound than this, in per cent, it is mostly the bound that is weak, and a number would mislead. */
const mostPercent = 20

/**
 * "As fair as eleven allow: nothing fairer is possible." Value and bound in seconds². `within`: what every plan that
 * this one was compared with has in common with it, besides the rules.
 */
export function sayProof(of: {
  readonly value: number
  readonly bound: number
  readonly proven: boolean
  readonly players: number
  readonly within: ProvenWithin
}): string {
  const { value, bound, proven, players } = of
  const within = sayWithin(of.within)
  if (proven) return `As fair as ${countWord(players)} allow${within}: nothing fairer is possible.`
  const percent = bound > 0 ? ((value - bound) / bound) * 100 : Number.POSITIVE_INFINITY
  if (percent <= mostPercent)
    return `Within ${Math.max(1, Math.ceil(percent))} % of the best possible${within}.`
  return 'A fair plan that keeps every rule; how much fairer one could be is not known.'
}

function sayWithin({ heldFast, freeGame }: ProvenWithin): string {
  if (heldFast && freeGame) return ' around what is held fast, with this free game'
  if (heldFast) return ' around what is held fast'
  return freeGame ? ' with this free game' : ''
}
