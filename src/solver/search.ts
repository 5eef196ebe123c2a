import type { Chance } from '#common/chance'
import { anneal, type Goal } from '#rotation/anneal'
import { annealShares } from '#rotation/anneal-shares'
import { type Board, layOut, planOf } from '#rotation/board'
import { checkPlan } from '#rotation/check-plan'
import { hasOwnLimits } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import type { RotationPlan } from '#rotation/plan'
import type { RotationProblem } from '#rotation/problem'
import type { Deadline } from '#solver/deadline'
import { loadSolver, type Solver, type SolverAnswer, type SolverLimits } from '#solver/highs'
import type { LinearModel } from '#solver/linear-model'

/** One search for a rotation: what is asked, what may still be spent, and the chance that it draws from. */
export type Search = {
  readonly problem: RotationProblem
  readonly mayTake: MayTake
  readonly deadline: Deadline
  readonly chance: Chance
  readonly seed: number
}

/** Tries of an exchange, and steps of the simplex method, that make one unit of work. */
const triesPerWork = 1000
const quickTriesPerWork = 5000
const stepsPerWork = 2
/** Below this the exact solver is not even loaded. */
const leastMs = 120
const leastWork = 20
/** Kept back for the later goals when the exact solver is given its time. */
export const polishMs = 150
/** The exact solver looks at the clock now and then, and is late by as much as a tenth. */
const surely = 0.9

/** Lowers one goal of a plan by exchanges; the plan may break the rest limit at first, and then that is mended. */
export function lower(
  search: Search,
  board: Board,
  wish: {
    readonly goal: Goal
    readonly restLimit: number | null
    readonly tries: number
    readonly enough?: number
    readonly reserveMs?: number
    readonly stopWhenMended?: boolean
    readonly heat?: number
  },
): void {
  const { deadline, chance } = search
  const left = deadline.leftWork()
  const isQuick = wish.goal === 'unfairness' && waitsAlike(search.problem)
  const perWork = isQuick ? quickTriesPerWork : triesPerWork
  const tries = left === null ? wish.tries : Math.min(wish.tries, left * perWork)
  const reserveMs = wish.reserveMs ?? 0
  const mayGoOn = () => deadline.leftMs() > reserveMs
  if (isQuick) annealShares(board, { ...wish, tries, chance, mayGoOn })
  else anneal(board, { ...wish, tries, chance, mayGoOn })
  deadline.spend(Math.ceil(tries / perWork))
}

/** Whether the limit on rests is all that ties anyone's waits: the quick exchanges know of nothing else. */
function waitsAlike(problem: RotationProblem): boolean {
  return !hasOwnLimits(problem) && problem.players.every(({ restedBefore = 0 }) => restedBefore === 0)
}

/** The plan of a board when it keeps every rule with this rest limit. */
export function legalPlan(search: Search, board: Board, restLimit: number | null): RotationPlan | null {
  const plan = planOf(board)
  return checkPlan({ ...search.problem, restLimit }, plan).length === 0 ? plan : null
}

export function boardOf(search: Search, plan: RotationPlan): Board {
  return layOut(search.problem, plan)
}

/** The exact solver, or null when there is no time for it any more. */
export async function solverInTime(search: Search): Promise<Solver | null> {
  if (search.deadline.leftMs() < leastMs || (search.deadline.leftWork() ?? leastWork) < leastWork) return null
  const solver = await loadSolver()
  return search.deadline.leftMs() < leastMs / 2 ? null : solver
}

/** Solves a model with a share (of 1) of what is left. */
export function solveInTime(
  search: Search,
  solver: Solver,
  asked: { readonly model: LinearModel; readonly share: number } & Partial<SolverLimits>,
): SolverAnswer {
  const { deadline, seed } = search
  const left = deadline.leftWork()
  const work = left === null ? null : Math.floor(left * asked.share * stepsPerWork)
  // Where work is limited the clock is a ceiling only: it must not decide what is found.
  const share = left === null ? asked.share : 1
  const answer = solver.solve(asked.model, {
    ...asked,
    timeMs: Math.max(1, (deadline.leftMs() - polishMs) * surely * share),
    work,
    seed,
  })
  deadline.spend(Math.ceil(answer.work / stepsPerWork))
  return answer
}
