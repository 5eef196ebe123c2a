import type { AheadClash } from '#ahead/clash'
import { type Hold, holdPractices } from '#ahead/draft/hold-practices'
import { planAtOnce, problemOfChoices } from '#ahead/draft/plan-at-once'
import { findAheadClash } from '#ahead/find-ahead-clash'
import { leansFor } from '#ahead/lean-to'
import type { AheadChoices, AheadPlan, SolvedAhead } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { problemOfAhead } from '#ahead/problem-of-request'
import type { AheadRequest } from '#ahead/request'
import { proofOf } from '#common/proof'

/** The weeks ahead as they are being planned. */
export type AheadDraft = {
  /** What is asked; its practices carry what the coach holds. */
  readonly request: AheadRequest
  /** Firm practices of the saved plan that are to stay. */
  readonly firm: ReadonlyMap<string, Hold>
  /** With what is firm held too: what a solver is asked. Offers stand as in `asked`. */
  readonly problem: AheadProblem
  /** Without what is firm: what the coach asked, and the page explains. */
  readonly asked: AheadProblem
  /** Null: none is known that keeps the rules. */
  readonly best: SolvedAhead | null
  readonly clash: readonly AheadClash[]
  /** Nothing better is being looked for. */
  readonly isSettled: boolean
}

/** A draft with its plan at once; with `choices` that keep the rules, with that plan. */
export function aheadDraft(
  request: AheadRequest,
  {
    firm,
    choices = null,
    isSettled = false,
  }: {
    readonly firm: ReadonlyMap<string, Hold>
    readonly choices?: AheadChoices | null
    readonly isSettled?: boolean
  },
): AheadDraft {
  const asked = problemOfAhead(request)
  const problem = firm.size > 0 ? problemOfAhead(holdPractices(request, firm)) : asked
  const of = { request, firm, asked, clash: [], isSettled }
  const isWhole = choices?.length === problem.practices.length
  const known = choices && isWhole ? problemOfChoices(problem, choices) : null
  if (choices && known)
    return { ...of, problem: known, best: solved(known, { choices, leans: leansFor(known, choices) }) }
  const made = planAtOnce(problem)
  if (made) return { ...of, problem: made.problem, best: solved(made.problem, made.plan) }
  // What is firm gives way before there is no plan at all, and so did the rest of designs: neither stands in its way.
  if (firm.size > 0) return aheadDraft(request, { firm: new Map() })
  const without = { ...problem, designRest: 0 }
  return { ...of, problem: without, best: null, clash: findAheadClash(without) }
}

/** Nothing is proven of it yet. */
function solved(problem: AheadProblem, plan: AheadPlan): SolvedAhead {
  return { plan, proof: proofOf(planValue(problem, plan).all, 0) }
}

/** A better plan, or more that is proven, of what the draft asks; of anything else it is left out. */
export function withBetter(
  draft: AheadDraft,
  {
    problem,
    best,
    isEnd,
  }: { readonly problem: AheadProblem; readonly best: SolvedAhead | null; readonly isEnd: boolean },
): AheadDraft {
  if (draft.problem !== problem) return draft
  const isBetter = best !== null && (draft.best === null || best.proof.value <= draft.best.proof.value + 1e-6)
  return { ...draft, best: isBetter ? best : draft.best, isSettled: isEnd || draft.isSettled }
}

export function withAheadClash(
  draft: AheadDraft,
  { problem, clash }: { readonly problem: AheadProblem; readonly clash: readonly AheadClash[] },
): AheadDraft {
  return draft.problem === problem ? { ...draft, best: null, clash, isSettled: true } : draft
}
