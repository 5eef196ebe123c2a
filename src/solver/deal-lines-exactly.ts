import { fairLineUp } from '#lineup/fair-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { allowedPlaces } from '#lineup/line-up-board'
import { movePrice, movesInside } from '#lineup/line-up-values'
import { isPeriodRunning } from '#lineup/period-running'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { roomInLines } from '#lineup/room-in-lines'
import { fieldLines } from '#match/format/line-wish'
import { type Line, lines } from '#match/match'
import { lineParts, timesInLine } from '#solver/line-shares'
import { clockShare, type LineUpSearch } from '#solver/line-up-stage'
import { LinearModel } from '#solver/linear-model'

/**
 * Who plays in which line, given who is on when: the least time beyond even shares of lines. Ends early with `enough`,
 * which cannot be beaten. The plan itself where nothing better was found.
 */
export function dealLinesExactly(
  { problem, solver, deadline, seed }: LineUpSearch,
  plan: LineUpPlan,
  limits: { readonly enough: number; readonly mostMs: number },
): LineUpPlan {
  const linear = new LinearModel()
  const longest = Math.max(1, ...problem.windows.map(windowSeconds))
  const columns = addPlaces(problem, linear, plan)
  addShares(problem, linear, columns)
  addMoves(problem, linear, columns)
  // What moves in and out of goal cost is settled already: no dealing out of lines changes it.
  const settled = movesWithGoal(problem, plan) * movePrice
  const start = new Map(
    columns.map(({ column, player, window, line }) => [column, plan[player]?.[window] === line ? 1 : 0]),
  )
  const answer = solver.solve(linear, {
    timeMs: Math.max(1, clockShare(deadline, limits.mostMs)),
    work: deadline.leftWork(),
    seed,
    start,
    boundWanted: (limits.enough - settled) / longest - 1e-6,
  })
  deadline.spend(answer.work)
  if (!answer.values) return plan
  const dealt = plan.map((own) => [...own])
  for (const { column, player, window, line } of columns) {
    const own = dealt[player]
    if (own && (answer.values[column] ?? 0) > 0.5) own[window] = line
  }
  return dealt
}

type Cell = {
  readonly column: number
  readonly player: number
  readonly window: number
  readonly line: (typeof fieldLines)[number]
}

function addPlaces(problem: LineUpProblem, linear: LinearModel, plan: LineUpPlan): readonly Cell[] {
  const allowed = allowedPlaces(problem)
  const count = problem.windows.length
  const cells: Cell[] = []
  for (const [window, { places }] of problem.windows.entries()) {
    const first = cells.length
    for (const [player, own] of plan.entries()) {
      const place = own[window] ?? null
      if (place === null || place === 'keeper') continue
      const mine: Cell[] = fieldLines.flatMap((line) =>
        (allowed[player * count + window] ?? 0) & (1 << lines.indexOf(line)) && places[line] > 0
          ? [{ column: linear.addColumn({ upper: 1, isWhole: true }), player, window, line }]
          : [],
      )
      linear.addRow(
        { lower: 1, upper: 1 },
        mine.map(({ column }) => [column, 1] as const),
      )
      cells.push(...mine)
    }
    for (const line of fieldLines)
      linear.addRow(
        { lower: places[line], upper: places[line] },
        cells.slice(first).flatMap((cell) => (cell.line === line ? [[cell.column, 1] as const] : [])),
      )
  }
  return cells
}

/** A player who stays on the field stays in its line, or the move is counted. */
function addMoves(problem: LineUpProblem, linear: LinearModel, cells: readonly Cell[]) {
  const price = movePrice / Math.max(1, ...problem.windows.map(windowSeconds))
  const keyOf = (player: number, window: number) => player * problem.windows.length + window
  const at = new Map<number, Cell[]>()
  for (const cell of cells) {
    const key = keyOf(cell.player, cell.window)
    at.set(key, [...(at.get(key) ?? []), cell])
  }
  const isRunning = isPeriodRunning(problem)
  for (const own of at.values()) {
    const [{ player, window } = { player: -1, window: -1 }] = own
    const before = at.get(keyOf(player, window - 1))
    if (window === 0) {
      const stood = isRunning ? (problem.players[player]?.running.line ?? null) : null
      for (const { column, line } of own)
        if (stood !== null && stood !== 'keeper' && line !== stood)
          linear.costs[column] = (linear.costs[column] ?? 0) + price
    } else if (before && problem.windows[window - 1]?.period === problem.windows[window]?.period) {
      const move = linear.addColumn({ cost: price, upper: 1, isWhole: false })
      for (const { column, line } of own) {
        const same = before.find((cell) => cell.line === line)
        linear.addRow({ upper: 0 }, [[column, 1], [move, -1], ...(same ? [[same.column, -1] as const] : [])])
      }
    }
  }
}

/** Those who stay on in one line all the time still move in and out of goal. */
function movesWithGoal(problem: LineUpProblem, plan: LineUpPlan): number {
  const inOneLine = (line: Line | null): Line | null => (line === null || line === 'keeper' ? line : 'back')
  const players = problem.players.map((own) => ({
    ...own,
    running: { ...own.running, line: inOneLine(own.running.line) },
  }))
  return movesInside(
    { ...problem, players },
    plan.map((own) => own.map(inOneLine)),
  )
}

function addShares(problem: LineUpProblem, linear: LinearModel, cells: readonly Cell[]) {
  const rooms = roomInLines(problem, fairLineUp(problem))
  const times = timesInLine(problem)
  const lengths = problem.windows.map(windowSeconds)
  const longest = Math.max(1, ...lengths)
  const whole = lengths.reduce((sum, seconds) => sum + seconds, 0)
  for (const player of problem.players.keys()) {
    for (const line of fieldLines) {
      const room = rooms[player]?.[line] ?? 0
      const own = cells.filter((cell) => cell.player === player && cell.line === line)
      if (own.length === 0 || room >= whole) continue
      const parts = lineParts(room, times).map(
        ({ seconds, cost }) =>
          [linear.addColumn({ cost, upper: seconds / longest, isWhole: false }), -1] as const,
      )
      const played = own.map(({ column, window }) => [column, (lengths[window] ?? 0) / longest] as const)
      linear.addRow({ lower: 0, upper: 0 }, [...played, ...parts])
    }
  }
}
