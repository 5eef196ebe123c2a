import { seededChance } from '#common/chance'
import { anneal } from '#rotation/anneal'
import { type Board, layOut, planOf } from '#rotation/board'
import { allLimitExcess } from '#rotation/board-rules'
import { checkPlan } from '#rotation/check-plan'
import { closePlan } from '#rotation/close-plan'
import { firstPlan } from '#rotation/first-plan'
import { mayTakeIn } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { leastRestByCounting } from '#rotation/rest-bound'
import { returnToOld } from '#rotation/return-to-old'
import { settle } from '#rotation/settle'
import { spreadTurns } from '#rotation/spread-turns'

export type TailWish = {
  readonly old: RotationPlan
  readonly seed: number
  /** Exchanges tried in all: the search ends by their number, not by a clock, so it is the same on every machine. */
  readonly tries: number
}

export type TailPlan = { readonly plan: RotationPlan; readonly restLimitUsed: number | null }

/** Plans that differ by less than this in unfairness (of 1) count as equally fair; the one closer to the old is taken. */
const asFair = 0.005
/** How many limits on rests above the least by counting are tried. */
const mostRaised = 3

/**
 * A plan for what is left of a practice, as fair as a short search finds and then as close to the old plan as that
 * allows. It keeps every rule, with the smallest limit on rests from the one asked for on that was reached. Null: some
 * turn cannot be seated, or what single players agreed to was not reached.
 */
export function replanTail(problem: RotationProblem, wish: TailWish): TailPlan | null {
  const mayTake = mayTakeIn(problem)
  const asked = problem.restLimit
  const close = closePlan(problem, mayTake, wish.old)
  if (close === null) return null
  const least = asked === null ? null : leastRestByCounting(problem, asked)
  const closeBoard = layOut(problem, close)
  const isClose = allLimitExcess(closeBoard, least) === 0
  if (isClose) settle(closeBoard, least)
  const fairest = searchWithin(problem, { ...wish, least, start: planOf(closeBoard) })
  if (fairest === null) return null
  const { board, limit } = fairest
  const isSameLimit = isClose && limit === least
  const values = [closeBoard, board].map((own) => planValues(problem, planOf(own)).unfairness)
  const [closeValue = 0, fairValue = 0] = values
  const chosen = isSameLimit && !isWorthChanging(closeValue, fairValue) ? closeBoard : board
  returnToOld(chosen, wish.old, { restLimit: limit, most: wish.tries })
  spreadTurns(chosen, { restLimit: limit, most: wish.tries })
  settle(chosen, limit)
  return { plan: planOf(chosen), restLimitUsed: limit }
}

/**
 * A plan of the rest that a longer search found, brought as close to the one that stands as leaves it as fair: so that a
 * better plan changes no more names than it must.
 */
export function broughtBack(
  problem: RotationProblem,
  plan: RotationPlan,
  to: { readonly old: RotationPlan; readonly restLimit: number | null },
): RotationPlan {
  const board = layOut(problem, plan)
  returnToOld(board, to.old, { restLimit: to.restLimit, most: mostReturns })
  settle(board, to.restLimit)
  const closer = planOf(board)
  // The plan found was checked by whoever found it; what was made of it is checked here.
  return checkPlan({ ...problem, restLimit: to.restLimit }, closer).length === 0 ? closer : plan
}

const mostReturns = 50_000

/** Whether a plan is so much fairer than the one that stands that names may change for it. Unfairness, seconds². */
export function isWorthChanging(now: number, found: number): boolean {
  return now > found * (1 + asFair) + 1e-6
}

/** The fairest plan met that keeps every limit; limits on rests are raised one by one where none is met. */
function searchWithin(
  problem: RotationProblem,
  wish: TailWish & { readonly least: number | null; readonly start: RotationPlan },
): { readonly board: Board; readonly limit: number | null } | null {
  const { least, start, seed, tries } = wish
  const mayTake = mayTakeIn(problem)
  const most = least === null ? 0 : mostRaised
  for (let raised = 0; raised <= most; raised += 1) {
    const limit = least === null ? null : least + raised
    const fresh = firstPlan(problem, mayTake, { waitingWeight: raised === 0 ? 0.5 : 4, restLimit: limit })
    const starts = fresh ? [start, fresh] : [start]
    let best: { readonly board: Board; readonly value: number } | null = null
    for (const [index, plan] of starts.entries()) {
      const board = layOut(problem, plan)
      anneal(board, {
        goal: 'unfairness',
        restLimit: limit,
        chance: seededChance(seed + index),
        tries: tries / starts.length,
        mayGoOn: () => true,
      })
      if (allLimitExcess(board, limit) > 0) continue
      settle(board, limit)
      const value = planValues(problem, planOf(board)).unfairness
      if (best === null || value < best.value) best = { board, value }
    }
    if (best) return { board: best.board, limit }
  }
  return least === null ? null : waitingAsLongAsItTakes(problem, wish)
}

/** Without a limit on rests in the search; the plan's own longest wait becomes the limit. */
function waitingAsLongAsItTakes(
  problem: RotationProblem,
  wish: TailWish & { readonly least: number | null },
): { readonly board: Board; readonly limit: number | null } | null {
  const fresh = firstPlan(problem, mayTakeIn(problem), { waitingWeight: 40, restLimit: wish.least })
  if (fresh === null) return null
  const board = layOut(problem, fresh)
  anneal(board, {
    goal: 'unfairness',
    restLimit: null,
    chance: seededChance(wish.seed),
    tries: wish.tries,
    stopWhenMended: true,
    mayGoOn: () => true,
  })
  if (allLimitExcess(board, null) > 0) return null
  let limit = wish.least ?? 0
  while (allLimitExcess(board, limit) > 0) limit += 1
  return { board, limit }
}
