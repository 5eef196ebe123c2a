import type { OtherPlan } from '#ahead/draft/ahead-engine'
import { chosenOffer, type SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { proofOf } from '#common/proof'

/** A plan, and others beside it. */
type BesideIt = { readonly solved: SolvedAhead; readonly others: readonly OtherPlan[] }

/** Minutes that are none. */
const hair = 1e-6

/**
 * Where one of the others turned out better than the plan itself, it takes its place, and the plan stands among them: so
 * that nobody is handed a plan while a better one is known. Costs are those of the best.
 */
export function bestFirst(problem: AheadProblem, practice: number, { solved, others }: BesideIt): BesideIt {
  const best = others.reduce<OtherPlan | null>(
    (least, own) => (least === null || minutesOf(own.solved) < minutesOf(least.solved) ? own : least),
    null,
  )
  if (!best || minutesOf(best.solved) >= minutesOf(solved) - hair) return { solved, others }
  const value = minutesOf(best.solved)
  const before = {
    theme: chosenOffer(problem, solved.plan.choices, practice)?.theme ?? -1,
    solved,
  }
  return {
    // What no plan of the request beats, the one with the wish of the other does not either; its own bound is of its wish.
    solved: { plan: best.solved.plan, proof: proofOf(value, solved.proof.bound) },
    others: [before, ...others.filter((own) => own !== best)]
      .map((own) => ({ ...own, costs: minutesOf(own.solved) - value }))
      .sort((one, other) => one.costs - other.costs || one.theme - other.theme),
  }
}

function minutesOf({ proof }: SolvedAhead): number {
  return proof.value
}
