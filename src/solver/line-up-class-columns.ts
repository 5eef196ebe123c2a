import type { Seconds } from '#common/time'
import type { LineUpProblem } from '#lineup/problem'
import type { LinearModel } from '#solver/linear-model'
import { type RowArc, type RowNetwork, rowNetwork } from '#solver/row-network'
import { offField } from '#solver/row-state'

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
type Terms = Readonly<Record<ModelGoal, Term[]>>

export type ClassColumns = {
  readonly members: readonly number[]
  readonly network: RowNetwork
  /** Column of an arc: this and its place in the network's list. */
  readonly firstArc: number
}

/**
 * More than a match has that people play (about 45 000 with 22 players and 20 times). The solver hears no clock while it
 * makes a model ready, so one that is much larger would run on for minutes.
 */
export const mostColumns = 60_000

/** What a class may do, and what that adds to each goal. Null where it would be too large to be solved. */
export function addClass(
  linear: LinearModel,
  own: {
    readonly problem: LineUpProblem
    readonly members: readonly number[]
    readonly levels: ClassLevels
    readonly terms: Terms
  },
): ClassColumns | null {
  const { problem, members, levels, terms } = own
  const { play, keep, start } = levels
  const player = members[0] ?? 0
  // One player's times are summed up in a row; of several, the network tells them.
  const tellsTime = members.length > 1
  const network = rowNetwork(problem, player, {
    tellsTime,
    play: secondsOf(play),
    keep: keep && secondsOf(keep),
    mayStart: (isOn) => startLevel(start, isOn) !== undefined,
    mostArcs: mostColumns - linear.columns,
  })
  if (!network) return null
  const columns = { members, network, firstArc: linear.columns }
  addFlow(linear, columns)
  addArcTerms(columns, start, terms)
  if (tellsTime) addEndTerms(columns, levels, terms)
  else {
    const unit = problem.windows.reduce((most, { start: from, end }) => Math.max(most, end - from), 1)
    const link = (own: readonly Level[], of: (arc: RowArc) => Seconds) =>
      addLevels(linear, columns, { levels: own, of, unit })
    for (const [column, level] of link(play, ({ seconds }) => seconds)) addPlayTerms(terms, column, level)
    if (keep && problem.players[player]?.keeps)
      for (const [column, level] of link(keep, ({ goal }) => goal)) addCost(terms.goal, column, level)
  }
  return columns
}

function secondsOf(levels: readonly Level[]): ReadonlySet<Seconds> {
  return new Set(levels.map(({ seconds }) => seconds))
}

function startLevel(start: readonly Level[], isOn: boolean): Level | undefined {
  return start.find(({ seconds }) => seconds === (isOn ? 1 : 0))
}

/** As many ways from the first node to the ends as the class has members. */
function addFlow(linear: LinearModel, { members, network }: ClassColumns) {
  const count = members.length
  const out: Term[] = []
  const balance = new Map<number, Term[]>()
  const pass = (node: number, term: Term) => {
    const own = balance.get(node)
    if (own) own.push(term)
    else balance.set(node, [term])
  }
  for (const { from, to } of network.arcs) {
    const column = linear.addColumn({ upper: count, isWhole: true })
    if (from === 0) out.push([column, 1])
    else pass(from, [column, -1])
    pass(to, [column, 1])
  }
  for (const { node } of network.ends) pass(node, [linear.addColumn({ upper: count, isWhole: false }), -1])
  linear.addRow({ lower: count, upper: count }, out)
  for (const entries of balance.values()) linear.addRow({ lower: 0, upper: 0 }, entries)
}

function addArcTerms({ network, firstArc }: ClassColumns, start: readonly Level[], terms: Terms) {
  for (const [index, { first, places, changes }] of network.arcs.entries()) {
    const column = firstArc + index
    if (changes > 0) terms.changes.push([column, changes])
    if (first === 0) addCost(terms.starts, column, startLevel(start, places[0] !== offField))
  }
}

function addEndTerms({ network, firstArc }: ClassColumns, { play, keep }: ClassLevels, terms: Terms) {
  const firstEnd = firstArc + network.arcs.length
  for (const [index, { seconds, goal }] of network.ends.entries()) {
    addPlayTerms(
      terms,
      firstEnd + index,
      play.find((level) => level.seconds === seconds),
    )
    addCost(
      terms.goal,
      firstEnd + index,
      keep?.find((level) => level.seconds === goal),
    )
  }
}

/** A column for each level, one of which is chosen: what the arcs come to. */
function addLevels(
  linear: LinearModel,
  { network, firstArc }: ClassColumns,
  asked: {
    readonly levels: readonly Level[]
    readonly of: (arc: RowArc) => Seconds
    /** Seconds are counted in these. */
    readonly unit: Seconds
  },
): readonly (readonly [column: number, level: Level])[] {
  const { levels, of, unit } = asked
  const chosen = levels.map((level) => [linear.addColumn({ upper: 1, isWhole: true }), level] as const)
  linear.addRow(
    { lower: 1, upper: 1 },
    chosen.map(([column]): Term => [column, 1]),
  )
  linear.addRow({ lower: 0, upper: 0 }, [
    ...chosen.map(([column, { seconds }]): Term => [column, seconds / unit]),
    ...network.arcs.map((arc, index): Term => [firstArc + index, -of(arc) / unit]),
  ])
  return chosen
}

function addPlayTerms(terms: Terms, column: number, level: Level | undefined) {
  addCost(terms.minutes, column, level)
  if (level && level.short > 0) terms.promise.push([column, level.short])
}

function addCost(terms: Term[], column: number, level: Level | undefined) {
  if (level && level.cost > 0) terms.push([column, level.cost])
}
