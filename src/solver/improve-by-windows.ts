import { planValues } from '#rotation/plan-values'
import type { Fairest } from '#solver/fairest-plan'
import { addFairnessGoal } from '#solver/fairness-goal'
import type { Solver } from '#solver/highs'
import { modelWithLimits } from '#solver/own-limit-rows'
import { planOfSolution } from '#solver/plan-of-solution'
import { addRestRows } from '#solver/rest-rows'
import { columnsOfPlan, type RotationModel } from '#solver/rotation-model'
import { boardOf, legalPlan, polishMs, type Search, solveInTime } from '#solver/search'
import { singleTurns } from '#solver/turn-groups'

/** As many turns as are set free at once, at least; whole rounds, so that keepers who stay can change. */
const windowTurns = 6

/**
 * Makes a plan fairer a stretch of rounds at a time: all other turns stay as they are, the stretch is solved exactly, on
 * and on until no stretch helps or `untilMs` before the deadline. For requests where the limit on rests ties the turns
 * so tightly that the whole is too much at once. The bound stays as it was.
 */
export function improveByWindows(
  search: Search,
  solver: Solver,
  known: Fairest,
  wish: { readonly restLimit: number; readonly untilMs: number },
): Fairest {
  const { problem, deadline } = search
  const model = modelWithLimits(problem, singleTurns(problem))
  addRestRows(model, wish.restLimit)
  const { unitSeconds } = addFairnessGoal(model, known.plan)
  const free = { lower: [...model.linear.lower], upper: [...model.linear.upper] }
  let best = known
  const mayGoOn = () => deadline.leftMs() > wish.untilMs + polishMs && (deadline.leftWork() ?? 1) > 0
  const windows = windowsOf(search)
  for (let quiet = 0, at = 0; quiet < windows.length && mayGoOn(); at += 1) {
    const turns = windows[at % windows.length] ?? new Set<number>()
    const start = columnsOfPlan(model, best.plan)
    holdOutside(model, { turns, start, free })
    const answer = solveInTime(search, solver, { model: model.linear, share: 0.25, start })
    const plan =
      answer.values && answer.objective * unitSeconds ** 2 < best.value - 1e-6
        ? planOfSolution(model, search.mayTake, { values: answer.values, restLimit: wish.restLimit })
        : null
    const value =
      plan && legalPlan(search, boardOf(search, plan), wish.restLimit)
        ? planValues(problem, plan).unfairness
        : best.value
    quiet = plan && value < best.value - 1e-6 ? 0 : quiet + 1
    if (plan && value < best.value) best = { ...best, plan, value }
  }
  return best
}

/** Stretches of rounds next to each other that have enough turns, one beginning with each round. */
function windowsOf({ problem }: Search): readonly ReadonlySet<number>[] {
  return problem.rounds.map((_, first) => {
    const turns = new Set<number>()
    for (let step = 0; step < problem.rounds.length && turns.size < windowTurns; step += 1) {
      const round = (first + step) % problem.rounds.length
      problem.turns.forEach((turn, index) => {
        if (turn.round === round) turns.add(index)
      })
    }
    return turns
  })
}

function holdOutside(
  model: RotationModel,
  held: {
    readonly turns: ReadonlySet<number>
    readonly start: ReadonlyMap<number, number>
    readonly free: { readonly lower: readonly number[]; readonly upper: readonly number[] }
  },
): void {
  const hold = (column: number, isFree: boolean) => {
    const now = held.start.get(column) ?? 0
    model.linear.lower[column] = isFree ? (held.free.lower[column] ?? 0) : now
    model.linear.upper[column] = isFree ? (held.free.upper[column] ?? 0) : now
  }
  for (const { column, group } of model.shares)
    hold(
      column,
      (model.groups[group]?.turns ?? []).every((turn) => held.turns.has(turn)),
    )
  for (const { column, turns } of model.duties)
    hold(
      column,
      turns.every((turn) => held.turns.has(turn)),
    )
}
