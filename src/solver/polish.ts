import { type Board, planOf } from '#rotation/board'
import { mixingBound } from '#rotation/mixing-bound'
import { designedPlan } from '#rotation/mixing-designs'
import type { RotationPlan } from '#rotation/plan'
import { type PlanValues, planValues } from '#rotation/plan-values'
import { settle } from '#rotation/settle'
import { spreadTurns } from '#rotation/spread-turns'
import { boardOf, legalPlan, lower, type Search } from '#solver/search'

/** Exchanges tried for each goal: so many for each player and turn, and never more than so many. */
const triesPerPlace = 250
const mostTries = 100_000
/** Exchanges looked at for the wish that nobody goes twice running. */
const mostQuiet = 20_000
/** How often mixing is tried again where its bound is not reached. */
const mixingRounds = 3

/**
 * The later goals one after the other, none at the cost of one before it; then every exchange that is fairer still. The
 * plan keeps every rule before and after.
 */
export function polish(search: Search, plan: RotationPlan, restLimit: number | null): RotationPlan {
  const board = boardOf(search, plan)
  settle(board, restLimit)
  const tries = Math.min(mostTries, triesPerPlace * board.players * board.turns)
  lower(search, board, { goal: 'situations', restLimit, tries })
  lower(search, board, { goal: 'roleChanges', restLimit, tries })
  const isWished = (search.problem.together ?? []).length > 0
  const designed = isWished ? null : designedPlan(search.problem)
  if (designed && isBetter(search, designed, planOf(board), restLimit)) return designed
  mix(search, board, { restLimit, tries })
  spreadTurns(board, { restLimit, most: mostQuiet })
  settle(board, restLimit)
  return planOf(board)
}

function mix(
  search: Search,
  board: Board,
  wish: { readonly restLimit: number | null; readonly tries: number },
): void {
  const isWished = (search.problem.together ?? []).length > 0
  const enough = isWished ? Number.NEGATIVE_INFINITY : mixingBound(search.problem)
  for (let round = 0; round < mixingRounds; round += 1) {
    if (search.deadline.leftMs() <= 0 || planValues(search.problem, planOf(board)).mixing <= enough) return
    lower(search, board, { ...wish, goal: 'mixing', enough })
  }
}

/** Whether a plan keeps the rules and is better by the first goal in which the two differ. */
function isBetter(search: Search, plan: RotationPlan, than: RotationPlan, restLimit: number | null): boolean {
  if (legalPlan(search, boardOf(search, plan), restLimit) === null) return false
  const [own, other] = [planValues(search.problem, plan), planValues(search.problem, than)]
  const goals: readonly (keyof PlanValues)[] = ['unfairness', 'situationUnfairness', 'roleChanges', 'mixing']
  const first = goals.find((goal) => Math.abs(own[goal] - other[goal]) > 1e-6 * Math.max(1, other[goal]))
  return first !== undefined && own[first] < other[first]
}
