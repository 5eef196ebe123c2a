import { canBePlayed } from '#ahead/can-be-played'
import { checkAhead } from '#ahead/check-ahead'
import { checkLeans } from '#ahead/check-leans'
import type { AheadClash } from '#ahead/clash'
import { findAheadClash } from '#ahead/find-ahead-clash'
import type { AheadPlan, SolvedAhead } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { proofOf } from '#common/proof'
import { InvariantError } from '#common/result'
import { type AheadModel, aheadModel, exactBins, oneBin } from '#solver/ahead-model'
import { aheadRulesInForce } from '#solver/ahead-rules-in-force'
import {
  type AheadSearch,
  choicesOf,
  isProven,
  raiseBound,
  solveShare,
  take,
  takeChoices,
} from '#solver/ahead-search'
import { betterByWindows } from '#solver/better-by-windows'
import { setDeadline } from '#solver/deadline'
import { takeFirstPlans } from '#solver/first-plans'
import { loadSolver } from '#solver/highs'
import { NotDecided } from '#solver/not-decided'
import type { SolverSettings } from '#solver/solver-settings'

export type AheadSettings = SolverSettings<AheadPlan, SolvedAhead>

export type AheadAnswer =
  | { readonly kind: 'solved'; readonly solved: SolvedAhead }
  | { readonly kind: 'impossible'; readonly clash: readonly AheadClash[] }

/** With so many practices or fewer, who gets more of what is decided practice by practice where it has to be. */
const fewPractices = 6

/**
 * The best plan of the weeks ahead with what is proven of it, or why there is none. Choices come from a model with all
 * practices in one bin, and who gets more of what from a linear program for the choices; so the bound holds for every
 * plan, in expectation.
 * @throws InvariantError when a plan is about to be returned that breaks a rule.
 * @throws NotDecided when the time was too short to find a plan or to know that there is none.
 */
export async function solveAhead(problem: AheadProblem, settings: AheadSettings): Promise<AheadAnswer> {
  const clash = findAheadClash(problem)
  if (clash.length > 0) return { kind: 'impossible', clash }
  const { start, seed, onBetter } = settings
  const search: AheadSearch = {
    problem,
    solver: await loadSolver(),
    deadline: setDeadline(settings),
    seed,
    tell: ({ plan, value }, bound) => onBetter?.({ plan, proof: proofOf(value, bound) }),
    best: null,
    bound: 0,
  }
  if (start && canBePlayed(problem, start)) take(search, start)
  takeFirstPlans(search)
  // With nothing to choose there is one plan.
  if (problem.practices.length === 0) search.bound = search.best?.value ?? 0
  else if (isImpossible(search))
    return { kind: 'impossible', clash: [{ rules: aheadRulesInForce(problem), practice: null, theme: null }] }
  const { best, bound } = search
  if (!best) throw new NotDecided()
  if (!canBePlayed(problem, best.plan))
    throw new InvariantError('A plan of the weeks ahead breaks a rule.', {
      rules: checkAhead(problem, best.plan.choices).slice(0, 5),
      leans: checkLeans(problem, best.plan).slice(0, 5),
    })
  return { kind: 'solved', solved: { plan: best.plan, proof: proofOf(best.value, bound) } }
}

/** Makes the plan better and the bound higher, as far as time goes. True: no plan keeps the rules. */
function isImpossible(search: AheadSearch): boolean {
  const { problem } = search
  const isFew = problem.practices.length <= fewPractices
  const together = aheadModel(problem, oneBin(problem))
  if (search.best) {
    const root = solveShare(search, together, { share: 0.5, isRelaxed: true })
    if (root?.status === 'optimal') raiseBound(search, root.bound)
    if (!isFew) betterByWindows(search, together)
  }
  if (isNone(search, together, isFew ? 0.5 : 0.95)) return true
  // What is decided for all practices together may be more than can be played: then each by itself settles it.
  if (isFew && !isProven(search)) isNone(search, aheadModel(problem, exactBins(problem)), 0.95)
  return false
}

/** One exact search. True: nothing keeps the rules. */
function isNone(search: AheadSearch, model: AheadModel, share: number): boolean {
  if (isProven(search)) return false
  const answer = solveShare(search, model, { share })
  if (!answer) return false
  if (answer.status === 'infeasible' && !search.best) return true
  raiseBound(search, answer.bound)
  if (answer.values) takeChoices(search, choicesOf(model, answer.values))
  return false
}
