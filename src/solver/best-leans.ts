import { leansFor } from '#ahead/lean-to'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { noSeats, type SeatColumn, seatColumns } from '#ahead/seat-column'
import { secondsInMinute } from '#common/time'
import { type AheadModel, aheadModel, exactBins } from '#solver/ahead-model'
import type { Solver } from '#solver/highs'

/** Seconds that are none. */
const nothing = 1e-6

/** The best there is for chosen offers: who gets more of what in which practice, by a linear program. */
export function bestLeans(
  problem: AheadProblem,
  choices: AheadChoices,
  { solver, timeMs }: { readonly solver: Solver; readonly timeMs: number },
): { readonly plan: AheadPlan; readonly isBest: boolean; readonly work: number } {
  const quick = { choices, leans: leansFor(problem, choices) }
  const model = leansModel(problem, choices)
  const { leans, work } = solveLeans(model, { solver, timeMs })
  if (!leans) return { plan: quick, isBest: false, work }
  const best = { choices, leans }
  // Where both are as good, the quick one spreads what is made up for over the weeks.
  const isAsGood = planValue(problem, quick).all <= planValue(problem, best).all + nothing
  return { plan: isAsGood ? quick : best, isBest: true, work }
}

/** Who gets more of what, for choices that are settled. */
export function leansModel(problem: AheadProblem, choices: AheadChoices): AheadModel {
  return aheadModel(onlyChosen(problem, choices), exactBins(problem))
}

/** The leans that cost least by what such a model has as costs; null: not found in time. */
export function solveLeans(
  model: AheadModel,
  { solver, timeMs }: { readonly solver: Solver; readonly timeMs: number },
): { readonly leans: AheadPlan['leans'] | null; readonly work: number } {
  const limits = { timeMs, work: null, seed: 1, isRelaxed: true }
  const { status, values, work } = solver.solve(model.linear, limits)
  return { leans: status === 'optimal' && values ? leansOf(model, values) : null, work }
}

function leansOf({ leans }: AheadModel, values: Float64Array): AheadPlan['leans'] {
  return leans.map((players) =>
    players.map((columns) => {
      const own: Record<SeatColumn, number> = { ...noSeats }
      columns.forEach((column, index) => {
        const seconds = column === null ? 0 : (values[column] ?? 0) * secondsInMinute
        const seat = seatColumns[index]
        if (seat && Math.abs(seconds) > nothing) own[seat] = seconds
      })
      return own
    }),
  )
}

/** The problem with the chosen offers alone, and no rule: choices are settled. */
function onlyChosen(problem: AheadProblem, choices: AheadChoices): AheadProblem {
  return {
    ...problem,
    practices: problem.practices.map((own, practice) => ({
      ...own,
      held: null,
      offers: own.offers.filter((_, offer) => offer === choices[practice]),
    })),
    themes: problem.themes.map((own) => ({
      ...own,
      firstWeek: null,
      lastWeek: null,
      after: null,
      leastWeeksBetween: null,
      mostWeeksBetween: null,
    })),
    blocks: [],
    designRest: 0,
  }
}
