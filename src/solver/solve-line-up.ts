import { proofOf } from '#common/proof'
import { InvariantError } from '#common/result'
import { checkLineUp } from '#lineup/check-line-up'
import { isBetterLineUp } from '#lineup/compare-line-ups'
import { findLineUpClash, type LineUpClash } from '#lineup/find-line-up-clash'
import { type LineUp, type LineUpPlan, lineUpGoals } from '#lineup/line-up'
import { lineUpOf } from '#lineup/line-up-of-plan'
import { lineUpValues } from '#lineup/line-up-values'
import type { LineUpProblem } from '#lineup/problem'
import { quickLineUp } from '#lineup/quick-line-up'
import { setDeadline } from '#solver/deadline'
import { loadSolver } from '#solver/highs'
import { lineUpClasses } from '#solver/line-up-classes'
import { type Known, reachGoals } from '#solver/line-up-goals'
import type { LineUpSearch } from '#solver/line-up-stage'
import { rulesInForce } from '#solver/rules-in-force'
import type { SolverSettings } from '#solver/solver-settings'

export type LineUpSettings = SolverSettings<LineUpPlan, LineUp>

export type LineUpAnswer =
  | { readonly kind: 'solved'; readonly lineUp: LineUp }
  | { readonly kind: 'impossible'; readonly clash: readonly LineUpClash[] }

/** As long as exact search needs something to begin with, no longer. */
export const firstSteps = 10_000

/**
 * The best line-up, goal by goal, with proofs; or why there is none.
 * @throws InvariantError when a plan is about to be returned that breaks a rule.
 */
export async function solveLineUp(problem: LineUpProblem, settings: LineUpSettings): Promise<LineUpAnswer> {
  const { start, onBetter, seed } = settings
  const given = start && checkLineUp(problem, start).length === 0 ? start : null
  const clash = given ? [] : findLineUpClash(problem).filter(isOfRules)
  if (clash.length > 0) return { kind: 'impossible', clash }
  const search = await lineUpSearch(problem, settings)
  const tell = ({ plan }: Known) => onBetter?.(lineUpOf(problem, plan))
  const searched = (own: { readonly seed: number; readonly steps?: number }) => {
    const plan = quickLineUp(problem, own)
    return plan && knownPlan(problem, plan)
  }
  const first = betterOf(searched({ seed, steps: firstSteps }), given && knownPlan(problem, given))
  if (first) tell(first)
  const found = reachGoals(search, { first, another: () => searched({ seed: seed + 1 }), onBetter: tell })
  if (!found) return { kind: 'impossible', clash: [{ kind: 'rules', rules: rulesInForce(problem) }] }
  const { plan, values } = found.best
  const broken = checkLineUp(problem, plan)
  if (broken.length > 0) throw new InvariantError('A line-up breaks a rule.', { broken: broken.slice(0, 5) })
  const proofs = Object.fromEntries(
    lineUpGoals.map((goal) => [goal, proofOf(values[goal], found.bounds[goal])]),
  ) as LineUp['proofs']
  return { kind: 'solved', lineUp: { plan, proofs } }
}

/** A promise that cannot be kept forbids no line-up: it is missed by as little as can be. */
export function isOfRules({ kind }: LineUpClash): boolean {
  return kind !== 'leastAboveThere' && kind !== 'leastAboveMost'
}

/** What the stages of a search share. */
export async function lineUpSearch(
  problem: LineUpProblem,
  settings: Omit<LineUpSettings, 'start' | 'onBetter'>,
): Promise<LineUpSearch> {
  return {
    problem,
    classes: lineUpClasses(problem),
    solver: await loadSolver(),
    deadline: setDeadline(settings),
    seed: settings.seed,
  }
}

function knownPlan(problem: LineUpProblem, plan: LineUpPlan): Known {
  return { plan, values: lineUpValues(problem, plan) }
}

function betterOf(one: Known | null, other: Known | null): Known | null {
  if (!one || !other) return one ?? other
  return isBetterLineUp(other.values, one.values) ? other : one
}
