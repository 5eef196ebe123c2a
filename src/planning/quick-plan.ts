import { type Chance, seededChance } from '#common/chance'
import { accept, InvariantError, type Result, refuse } from '#common/result'
import type { PlanRequest } from '#planning/practice-plan'
import { mirrored, otherHalf, problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { turnFrames } from '#planning/turn-frames'
import { anneal, type Goal } from '#rotation/anneal'
import { layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { type ClashPart, findClash } from '#rotation/clash'
import { firstPlan } from '#rotation/first-plan'
import { mayTakeIn } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import { settle } from '#rotation/settle'

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
 * @throws InvariantError when a request without a clash has no plan, which cannot be.
 */
export function quickPlan(request: PlanRequest, seed = 1): Result<QuickPlan, ClashPart> {
  const open = problemOfRequest(request)
  const clash = findClash(open)
  if (clash.length > 0) return refuse(...clash)
  const chance = seededChance(seed)
  const first = planWithin(open, { chance, start: null })
  const problem = withFreeGames(open, { request, plan: first.plan })
  if (problem === open) return accept({ ...first, problem })
  const start = withMirroredHalves(first.plan, request)
  return accept({ ...planWithin(problem, { chance, start }), problem })
}

type Within = Pick<QuickPlan, 'plan' | 'restLimitUsed'>

/** The best plan met within the smallest limit on waits for which one is met, from the limit asked for on. */
function planWithin(
  problem: RotationProblem,
  by: { readonly chance: Chance; readonly start: RotationPlan | null },
): Within {
  const asked = problem.restLimit
  const most = problem.turns.length
  for (let limit = asked === null ? null : leastRestByCounting(problem, asked); ; ) {
    for (const waitingWeight of limit === null ? [0] : waitingWeights) {
      const start = by.start ?? firstPlan(problem, mayTakeIn(problem), { waitingWeight, restLimit: limit })
      if (start === null) throw new InvariantError('A request without a clash has no plan.')
      const plan = improve(problem, { start, limit, chance: by.chance })
      if (checkPlan({ ...problem, restLimit: limit }, plan).length === 0)
        return { plan, restLimitUsed: limit }
    }
    if (limit === null || limit > most)
      throw new InvariantError('A plan without a limit on waits breaks a rule.', { limit, most })
    limit += 1
  }
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
  settle(board, from.limit)
  return planOf(board)
}

/** The plan with the second half of each free game as the first one has it, the roles swapped. */
function withMirroredHalves(plan: RotationPlan, request: PlanRequest): RotationPlan {
  const frames = turnFrames(request.design.rounds)
  return plan.map((places, turn) => {
    const first = frames[turn]?.half === 1 ? otherHalf(frames, turn) : null
    const before = first === null ? undefined : plan[first]
    const isWhole = before?.every((place, player) => place < 0 === (places[player] ?? -1) < 0)
    return before && isWhole ? before.map(mirrored) : places
  })
}
