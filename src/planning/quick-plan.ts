import { type Chance, seededChance } from '#common/chance'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import type { PlanRequest } from '#planning/practice-plan'
import { problemOfRequest, withFreeGames, withMirroredHalves } from '#planning/problem-of-request'
import { restLimitKept } from '#planning/rest-limit-kept'
import { anneal, type Goal } from '#rotation/anneal'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { type ClashPart, findClash } from '#rotation/clash'
import { firstPlan } from '#rotation/first-plan'
import { keepAreas } from '#rotation/keep-areas'
import { mayTakeIn } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import { planWithinLimits } from '#rotation/plan-within-limits'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import { settle } from '#rotation/settle'
import { spreadTurns } from '#rotation/spread-turns'

/** A rotation that keeps every rule, made at once; `problem` has its free games settled as they stand in it. */
export type QuickPlan = {
  readonly problem: RotationProblem
  readonly plan: RotationPlan
  /** The limit on waits in a row that it keeps; null: none was asked. */
  readonly restLimitUsed: number | null
}

/** How much waiting weighs in the first plans that are tried, from even shares alone to whoever waited longest. */
const waitingWeights = [0.5, 4, 40]
/** Exchanges tried for each goal: so that a phone answers before the thumb has left the glass. */
const tries: Readonly<Record<Goal, number>> = {
  unfairness: 12_000,
  situations: 3_000,
  roleChanges: 3_000,
  mixing: 5_000,
}

/**
 * A legal plan without the exact solver, the same for the same request and seed; or what of the request clashes.
 */
export function quickPlan(request: PlanRequest, seed = 1): Result<QuickPlan, ClashPart> {
  const open = problemOfRequest(request)
  const clash = findClash(open)
  if (clash.length > 0) return refuse(...clash)
  const chance = seededChance(seed)
  const first = planWithin(open, { chance, start: null })
  if (!first) return refuse(...limitsOf(open))
  const problem = withFreeGames(open, { request, plan: first.plan })
  if (problem === open) return accept({ ...first, plan: keepAreas(problem, first.plan), problem })
  const start = withMirroredHalves(first.plan, { request })
  const settled = planWithin(problem, { chance, start })
  if (!settled) return refuse(...limitsOf(open))
  return accept({ ...settled, plan: keepAreas(problem, settled.plan), problem })
}

/** What single players agreed to, as what stands in the way. */
function limitsOf(problem: RotationProblem): readonly ClashPart[] {
  return problem.players.flatMap(({ mostTurns, restsAfterTurn }, player): ClashPart[] => [
    ...(mostTurns == null ? [] : [{ rule: 'mostTurns' as const, turn: 0, player }]),
    ...(restsAfterTurn ? [{ rule: 'restsAfterTurn' as const, turn: 0, player }] : []),
  ])
}

type Within = Pick<QuickPlan, 'plan' | 'restLimitUsed'>

/**
 * The best plan met within the smallest limit on waits for which one is met, from the limit asked for on. Null: none was
 * met that keeps what single players agreed to.
 */
function planWithin(
  problem: RotationProblem,
  by: { readonly chance: Chance; readonly start: RotationPlan | null },
): Within | null {
  const asked = problem.restLimit
  const least = asked === null ? null : leastRestByCounting(problem, asked)
  for (let limit = least, step = 0; step < mostSteps; step += 1) {
    for (const waitingWeight of limit === null ? [0] : waitingWeights) {
      const start = by.start ?? firstPlan(problem, mayTakeIn(problem), { waitingWeight, restLimit: limit })
      if (start === null) throw new InvariantError('A request without a clash has no plan.')
      const plan = improve(problem, { start, limit, chance: by.chance })
      if (keepsRules(problem, plan, limit)) return { plan, restLimitUsed: limit }
    }
    if (limit === null) break
    limit += 1
  }
  return withItsOwnWaits(problem)
}

/** After so many tries with longer and longer waits, what single players agreed to is what stands in the way. */
const mostSteps = 4

function withItsOwnWaits(problem: RotationProblem): Within | null {
  const { plan } = planWithinLimits(problem, mayTakeIn(problem))
  if (plan === null || !keepsRules(problem, plan, null)) return null
  return { plan, restLimitUsed: restLimitKept(problem, plan) }
}

function keepsRules(problem: RotationProblem, plan: RotationPlan, restLimit: number | null): boolean {
  return checkPlan({ ...problem, restLimit }, plan).length === 0
}

function improve(
  problem: RotationProblem,
  from: { readonly start: RotationPlan; readonly limit: number | null; readonly chance: Chance },
): RotationPlan {
  const board = layOut(problem, from.start)
  for (const goal of Object.keys(tries) as Goal[]) {
    const wish = { goal, restLimit: from.limit, chance: from.chance, tries: tries[goal] }
    anneal(board, { ...wish, mayGoOn: () => true })
    if (goal === 'unfairness') settle(board, from.limit)
  }
  spreadTurns(board, { restLimit: from.limit, most: tries.roleChanges })
  settle(board, from.limit)
  return planOf(board)
}
