import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import { type Deadline, isUp } from '#solver/deadline'
import type { Solver } from '#solver/highs'
import { addLineShares } from '#solver/line-shares'
import type { ModelGoal } from '#solver/line-up-class-columns'
import type { LineUpClass } from '#solver/line-up-classes'
import { type LevelTable, levelTable, type Within } from '#solver/line-up-levels'
import { type LineUpModel, lineUpModel } from '#solver/line-up-model'
import { patternsOf, startFrom } from '#solver/line-up-paths'

/** Where each player is in each window, lines of the field not told apart: `[player][window]`. */
export type LineUpPatterns = readonly (readonly number[])[]

export type LineUpSearch = {
  readonly problem: LineUpProblem
  readonly classes: readonly LineUpClass[]
  readonly solver: Solver
  readonly deadline: Deadline
  readonly seed: number
}

export type Stage = {
  readonly goal: ModelGoal | 'lines'
  readonly within: Within | 'atBounds'
  /** Seconds beyond an even share of lines that are allowed in all; null: lines are left aside. */
  readonly mostLines: number | null
  readonly start: LineUpPlan | null
  /** Of the clock; where work is counted, the clock is only there in case of need. */
  readonly mostMs: number
  /** Nothing is known yet: counted work does not end the search. */
  readonly mustFind?: boolean
}

export type StageAnswer = {
  readonly status: 'optimal' | 'infeasible' | 'stopped'
  readonly patterns: LineUpPatterns | null
  /** No line-up within what is allowed has less of the goal. */
  readonly bound: number
}

/** The least of one goal, others held within what they may come to. */
export function solveStage(search: LineUpSearch, stage: Stage): StageAnswer {
  const { problem, classes, deadline } = search
  const table = levelTable(problem, classes, stage.within)
  // Where time is up, making the model ready alone would take more than is left.
  const isBegun = stage.mostMs > 0 && (stage.mustFind || !isUp(deadline))
  const model = isBegun ? lineUpModel(problem, classes, levelsFor(stage, table)) : null
  if (!model) return { status: 'stopped', patterns: null, bound: measureOf(search, stage.goal, table)[0] }
  addCaps(model, stage, table)
  const lines = stage.goal === 'lines' || stage.mostLines !== null ? addLineShares(model) : []
  const longest = Math.sqrt(table.scale.minutes)
  if (stage.mostLines !== null && stage.goal !== 'lines')
    model.linear.addRow({ upper: stage.mostLines / longest + 1e-6 }, lines)
  for (const [column, value] of stage.goal === 'lines' ? lines : model.terms[stage.goal])
    model.linear.costs[column] = (model.linear.costs[column] ?? 0) + value
  const start = stage.start ? startFrom(model, stage.start) : new Map<number, number>()
  const answer = search.solver.solve(model.linear, {
    timeMs: Math.max(1, stage.mustFind ? stage.mostMs : clockShare(deadline, stage.mostMs)),
    work: stage.mustFind ? null : deadline.leftWork(),
    seed: search.seed,
    ...(start.size > 0 ? { start } : {}),
  })
  deadline.spend(answer.work)
  const [base, scale] = measureOf(search, stage.goal, table)
  const reached = answer.status === 'optimal' ? answer.objective : answer.bound
  return {
    status: answer.status === 'failed' ? 'stopped' : answer.status,
    patterns: answer.values && patternsOf(model, answer.values),
    bound: base + scale * Math.max(0, stage.goal === 'changes' ? Math.ceil(reached - 1e-4) : reached),
  }
}

/** Time in goal is told only from where it counts on: models before that are much smaller. */
function levelsFor({ goal, within }: Stage, { levels }: LevelTable): LevelTable['levels'] {
  const looksAtGoal = goal === 'goal' || within === 'atBounds' || within.goal !== null
  return looksAtGoal ? levels : levels.map((own) => ({ ...own, keep: null }))
}

/** Where work is counted, parts of the time would make answers differ from machine to machine. */
export function clockShare(deadline: Deadline, mostMs: number): number {
  return deadline.leftWork() === null ? Math.min(mostMs, deadline.leftMs()) : deadline.leftMs()
}

function addCaps(model: LineUpModel, { within, goal }: Stage, table: LevelTable) {
  if (within === 'atBounds') return
  const longest = Math.sqrt(table.scale.minutes)
  if (within.promise && goal !== 'promise')
    model.linear.addRow({ upper: within.promise / longest + 1e-6 }, model.terms.promise)
  for (const own of ['minutes', 'goal', 'starts'] as const) {
    const most = within[own]
    if (most === null || own === goal) continue
    const slack = (most - table.bounds[own]) / table.scale[own]
    // Where the bound is reached, the levels that are left say it all.
    if (slack > 1e-9) model.linear.addRow({ upper: slack + 1e-6 }, model.terms[own])
  }
}

function measureOf(
  { problem }: LineUpSearch,
  goal: Stage['goal'],
  table: LevelTable,
): readonly [base: number, scale: number] {
  if (goal === 'changes' || problem.windows.length === 0) return [0, 1]
  if (goal === 'promise' || goal === 'lines') return [0, Math.sqrt(table.scale.minutes)]
  return [table.bounds[goal], table.scale[goal]]
}
