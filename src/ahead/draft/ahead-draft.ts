import { checkAhead } from '#ahead/check-ahead'
import type { AheadClash } from '#ahead/clash'
import { type Hold, holdPractices } from '#ahead/draft/hold-practices'
import { leansFor } from '#ahead/lean-to'
import type { AheadChoices, SolvedAhead } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { problemOfAhead } from '#ahead/problem-of-request'
import { quickAhead } from '#ahead/quick-plan'
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

const seed = 1

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
  const of = { request, firm, problem, asked, clash: [], isSettled }
  if (choices && choices.length === problem.practices.length && checkAhead(problem, choices).length === 0)
    return { ...of, best: solved(problem, choices) }
  const plan = quickAhead(problem, { seed })
  if (plan) return { ...of, best: { plan, proof: proofOf(planValue(problem, plan).all, 0) } }
  // What is firm gives way before there is no plan at all.
  if (firm.size > 0) return aheadDraft(request, { firm: new Map() })
  return { ...of, best: null }
}

function solved(problem: AheadProblem, choices: AheadChoices): SolvedAhead {
  const plan = { choices, leans: leansFor(problem, choices) }
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
