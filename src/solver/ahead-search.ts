import type { AheadChoices, AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import type { AheadModel } from '#solver/ahead-model'
import { bestLeans } from '#solver/best-leans'
import { type Deadline, isUp } from '#solver/deadline'
import type { Solver, SolverAnswer } from '#solver/highs'

/** A plan, and its value in minutes. */
export type KnownAhead = { readonly plan: AheadPlan; readonly value: number }

/** One search for a plan: what is asked, what may still be spent, and what is known. */
export type AheadSearch = {
  readonly problem: AheadProblem
  readonly solver: Solver
  readonly deadline: Deadline
  readonly seed: number
  readonly tell: (known: KnownAhead, bound: number) => void
  best: KnownAhead | null
  /** No plan comes below it; minutes. */
  bound: number
}

/** Steps of the simplex method that make one unit of work. */
const stepsPerWork = 2
/** The exact solver looks at the clock now and then, and is late by as much as a tenth. */
const surely = 0.9
/** As long as the leans of one plan may take. */
const leansMs = 4000
/** The clock as a ceiling only. */
const longestMs = 120_000

/** Takes a plan where it is better than what is known. */
export function take(search: AheadSearch, plan: AheadPlan): boolean {
  const value = planValue(search.problem, plan).all
  if (search.best && value >= search.best.value - 1e-7) return false
  search.best = { plan, value }
  search.tell(search.best, search.bound)
  return true
}

/** Works out the best leans of some choices, and takes the plan where it is better. */
export function takeChoices(search: AheadSearch, choices: AheadChoices): boolean {
  const { problem, solver, deadline } = search
  const { plan, work } = bestLeans(problem, choices, { solver, timeMs: leansTime(deadline) })
  deadline.spend(Math.ceil(work / stepsPerWork))
  return take(search, plan)
}

/** Nothing is lower: a bound of a model of all plans. */
export function raiseBound(search: AheadSearch, bound: number): void {
  if (!(bound > search.bound)) return
  search.bound = bound
  if (search.best) search.tell(search.best, bound)
}

export function isProven({ best, bound }: AheadSearch): boolean {
  return best !== null && best.value - bound <= 1e-6 * Math.max(1, best.value)
}

/** Solves a model with a share (of 1) of what is left, beginning with the best choices known. Null: no time is left. */
export function solveShare(
  search: Pick<AheadSearch, 'deadline' | 'solver' | 'seed'> & { readonly best: KnownAhead | null },
  model: AheadModel,
  { share, isRelaxed = false }: { readonly share: number; readonly isRelaxed?: boolean },
): SolverAnswer | null {
  const { deadline, solver, seed, best } = search
  if (isUp(deadline)) return null
  const left = deadline.leftWork()
  const answer = solver.solve(model.linear, {
    timeMs: left === null ? Math.max(1, deadline.leftMs() * surely * share) : longestMs,
    work: left === null ? null : Math.max(1, Math.floor(left * share * stepsPerWork)),
    seed,
    isRelaxed,
    ...(best && !isRelaxed ? { start: startOf(model, best.plan.choices) } : {}),
  })
  deadline.spend(Math.max(1, Math.ceil(answer.work / stepsPerWork)))
  return answer
}

/** How long leans may take: where work is limited the clock must not decide what is found. */
export function leansTime(deadline: Deadline): number {
  return deadline.leftWork() === null ? Math.max(200, Math.min(leansMs, deadline.leftMs())) : longestMs
}

/** The choices of a solution. */
export function choicesOf({ choices }: AheadModel, values: Float64Array): AheadChoices {
  return choices.map((offers) => offers.findIndex((column) => column !== null && (values[column] ?? 0) > 0.5))
}

function startOf({ choices }: AheadModel, known: AheadChoices): ReadonlyMap<number, number> {
  const start = new Map<number, number>()
  choices.forEach((offers, practice) => {
    offers.forEach((column, offer) => {
      if (column !== null) start.set(column, known[practice] === offer ? 1 : 0)
    })
  })
  return start
}
