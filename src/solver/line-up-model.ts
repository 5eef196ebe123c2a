import type { Seconds } from '#common/time'
import { allowedPlaces } from '#lineup/line-up-board'
import type { LineUpProblem } from '#lineup/problem'
import type { LineUpClass } from '#solver/line-up-classes'
import { LinearModel } from '#solver/linear-model'
import { type RowArc, type RowNetwork, rowNetwork } from '#solver/row-network'
import { inGoal, offField, onField } from '#solver/row-state'

/** Times that a class may come to and what each costs, goal by goal; two for a start: off and on. */
export type ClassLevels = {
  readonly play: readonly Level[]
  /** Null: time in goal is not looked at. */
  readonly keep: readonly Level[] | null
  readonly start: readonly Level[]
}
export type Level = { readonly seconds: Seconds; readonly cost: number; readonly short: number }

export type ModelGoal = 'promise' | 'minutes' | 'goal' | 'starts' | 'changes'
export type Term = readonly [column: number, value: number]

export type ClassColumns = {
  readonly members: readonly number[]
  readonly network: RowNetwork
  /** Column of an arc: this and its place in the network's list. */
  readonly firstArc: number
}

/** Who is on, and who in goal, in each window; lines of the field not told apart, but there is always a way to deal them. */
export type LineUpModel = {
  readonly linear: LinearModel
  readonly terms: Readonly<Record<ModelGoal, readonly Term[]>>
  readonly classes: readonly ClassColumns[]
  readonly problem: LineUpProblem
}

/**
 * More than a match has that people play (about 45 000 with 22 players and 20 times). The solver hears no clock while it
 * makes a model ready, so one that is much larger would run on for minutes.
 */
export const mostColumns = 60_000

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
    const added = addClass(problem, linear, { terms, members, levels: own })
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

function addClass(
  problem: LineUpProblem,
  linear: LinearModel,
  own: {
    readonly terms: Record<ModelGoal, Term[]>
    readonly members: readonly number[]
    readonly levels: ClassLevels
  },
): ClassColumns | null {
  const { terms, members } = own
  const { play, keep, start } = own.levels
  const count = members.length
  const tellsTime = count > 1
  const secondsOf = (levels: readonly Level[]) => new Set(levels.map(({ seconds }) => seconds))
  const startLevel = (isOn: boolean) => start.find(({ seconds }) => seconds === (isOn ? 1 : 0))
  const network = rowNetwork(problem, members[0] ?? 0, {
    tellsTime,
    play: secondsOf(play),
    keep: keep && secondsOf(keep),
    mayStart: (isOn) => startLevel(isOn) !== undefined,
    mostArcs: mostColumns - linear.columns,
  })
  if (!network) return null
  const firstArc = linear.columns
  const balance = new Map<number, Term[]>()
  const enter = (node: number, term: Term) => {
    const own = balance.get(node)
    if (own) own.push(term)
    else balance.set(node, [term])
  }
  for (const arc of network.arcs) {
    const column = linear.addColumn({ upper: count, isWhole: true })
    enter(arc.from, [column, -1])
    enter(arc.to, [column, 1])
    if (arc.changes > 0) terms.changes.push([column, arc.changes])
    const cost = arc.first === 0 ? (startLevel(arc.places[0] !== offField)?.cost ?? 0) : 0
    if (cost > 0) terms.starts.push([column, cost])
  }
  for (const { node, seconds, goal } of network.ends) {
    const column = linear.addColumn({ upper: count, isWhole: false })
    enter(node, [column, -1])
    if (!tellsTime) continue
    costLevel(
      terms.promise,
      terms.minutes,
      column,
      play.find((level) => level.seconds === seconds),
    )
    costLevel(
      null,
      terms.goal,
      column,
      keep?.find((level) => level.seconds === goal),
    )
  }
  balance.delete(0)
  linear.addRow(
    { lower: count, upper: count },
    network.arcs.flatMap(({ from }, index): Term[] => (from === 0 ? [[firstArc + index, 1]] : [])),
  )
  if (network.arcs.length === 0) linear.addRow({ lower: count, upper: count }, [])
  for (const entries of balance.values()) linear.addRow({ lower: 0, upper: 0 }, entries)
  if (!tellsTime) {
    const unit = problem.windows.reduce((most, { start: from, end }) => Math.max(most, end - from), 1)
    const link = (
      levels: readonly Level[],
      of: (arc: RowArc) => Seconds,
      add: (column: number, level: Level) => void,
    ) => {
      const chosen: Term[] = []
      const times: Term[] = []
      for (const level of levels) {
        const column = linear.addColumn({ upper: 1, isWhole: true })
        chosen.push([column, 1])
        times.push([column, level.seconds / unit])
        add(column, level)
      }
      linear.addRow({ lower: 1, upper: 1 }, chosen)
      const played = network.arcs.map((arc, index): Term => [firstArc + index, -of(arc) / unit])
      linear.addRow({ lower: 0, upper: 0 }, [...times, ...played])
    }
    link(
      play,
      ({ seconds }) => seconds,
      (column, level) => costLevel(terms.promise, terms.minutes, column, level),
    )
    if (keep && problem.players[members[0] ?? 0]?.keeps)
      link(
        keep,
        ({ goal }) => goal,
        (column, level) => costLevel(null, terms.goal, column, level),
      )
  }
  return { members, network, firstArc }
}

function costLevel(short: Term[] | null, cost: Term[], column: number, level: Level | undefined) {
  if (level && level.cost > 0) cost.push([column, level.cost])
  if (short && level && level.short > 0) short.push([column, level.short])
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
