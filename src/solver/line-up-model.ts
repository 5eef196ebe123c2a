import { allowedPlaces } from '#lineup/line-up-board'
import type { LineUpProblem } from '#lineup/problem'
import {
  addClass,
  type ClassColumns,
  type ClassLevels,
  type ModelGoal,
  type Term,
} from '#solver/line-up-class-columns'
import type { LineUpClass } from '#solver/line-up-classes'
import { LinearModel } from '#solver/linear-model'
import { inGoal, offField, onField } from '#solver/row-state'

/** Who is on, and who in goal, in each window; lines of the field not told apart, but there is always a way to deal them. */
export type LineUpModel = {
  readonly linear: LinearModel
  readonly terms: Readonly<Record<ModelGoal, readonly Term[]>>
  readonly classes: readonly ClassColumns[]
  readonly problem: LineUpProblem
}

/** Null where it would be too large to be solved. */
export function lineUpModel(
  problem: LineUpProblem,
  classes: readonly LineUpClass[],
  levels: readonly ClassLevels[],
): LineUpModel | null {
  const linear = new LinearModel()
  const terms: Record<ModelGoal, Term[]> = { promise: [], minutes: [], goal: [], starts: [], changes: [] }
  const columns: ClassColumns[] = []
  for (const [index, { members }] of classes.entries()) {
    const own = levels[index] ?? { play: [], keep: [], start: [] }
    const added = addClass(linear, { problem, members, levels: own, terms })
    if (!added) return null
    columns.push(added)
  }
  addPlaceRows(problem, linear, columns)
  addPairRows(problem, linear, columns)
  const { mostChanges, mostSubstitutions } = problem.rules
  if (mostChanges !== null) linear.addRow({ upper: mostChanges }, terms.changes)
  if (mostSubstitutions !== null) {
    const comings = columns.flatMap(({ network, firstArc }) =>
      network.arcs.map(({ comings: own }, index): Term => [firstArc + index, own]),
    )
    linear.addRow({ upper: mostSubstitutions }, comings)
  }
  return { linear, terms, classes: columns, problem }
}

/** Columns with which anybody of a class is at a place in a window. */
export function columnsAt(
  own: ClassColumns,
  window: number,
  is: (place: number) => boolean,
): readonly Term[] {
  return own.network.arcs.flatMap(({ first, places }, index): Term[] => {
    const place = places[window - first]
    return place !== undefined && is(place) ? [[own.firstArc + index, 1]] : []
  })
}

/** Each window full; and of those who may not play everywhere no more than their lines have places (Hall's condition). */
function addPlaceRows(problem: LineUpProblem, linear: LinearModel, classes: readonly ClassColumns[]) {
  const allowed = allowedPlaces(problem)
  const count = problem.windows.length
  for (const [window, { places }] of problem.windows.entries()) {
    const room = (bits: number) =>
      (bits & 2 ? places.back : 0) + (bits & 4 ? places.middle : 0) + (bits & 8 ? places.forward : 0)
    const at = classes.map((own) => columnsAt(own, window, (place) => place === onField))
    const linesOf = classes.map(({ members }) => (allowed[(members[0] ?? 0) * count + window] ?? 0) & 14)
    linear.addRow({ lower: room(14), upper: room(14) }, at.flat())
    linear.addRow(
      { lower: places.keeper, upper: places.keeper },
      classes.flatMap((own) => columnsAt(own, window, (place) => place === inGoal)),
    )
    for (let bits = 2; bits < 14; bits += 2) {
      const bound = classes.flatMap((_, index) => ((linesOf[index] ?? 0) & ~bits ? [] : [index]))
      const most = bound.reduce((sum, index) => sum + (classes[index]?.members.length ?? 0), 0)
      if (most > room(bits))
        linear.addRow(
          { upper: room(bits) },
          bound.flatMap((index) => at[index] ?? []),
        )
    }
  }
}

function addPairRows(problem: LineUpProblem, linear: LinearModel, classes: readonly ClassColumns[]) {
  for (const pair of problem.apart) {
    const both = classes.filter(({ members }) => pair.includes(members[0] ?? -1))
    for (const window of problem.windows.keys())
      linear.addRow(
        { upper: 1 },
        both.flatMap((own) => columnsAt(own, window, (place) => place !== offField)),
      )
  }
}
