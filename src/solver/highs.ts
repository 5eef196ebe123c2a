import loadHighs, { type Highs } from 'highs'
import type { LinearModel } from '#solver/linear-model'

/** What became of a model. `stopped`: a limit came first; there may be values and a bound all the same. */
export type SolverAnswer = {
  readonly status: 'optimal' | 'infeasible' | 'stopped' | 'failed'
  /** The best solution found, column by column; null when none was. */
  readonly values: Float64Array | null
  readonly objective: number
  /** No solution is better than this. */
  readonly bound: number
  /** Steps of the simplex method that were made: the same for the same model on every machine. */
  readonly work: number
}

export type SolverLimits = {
  readonly timeMs: number
  /** Most steps of the simplex method; null: any number. */
  readonly work: number | null
  readonly seed: number
  /** A solution to begin with: values of the columns that are whole numbers. */
  readonly start?: ReadonlyMap<number, number>
  /** Whole numbers may be broken: only the bound is wanted. */
  readonly isRelaxed?: boolean
  /** The search may end when the bound has reached this. */
  readonly boundWanted?: number
}

/** A column over the rows of a master: what it costs and its entries. */
export type MasterColumn = {
  readonly cost: number
  readonly upper?: number
  readonly entries: readonly (readonly [number, number])[]
}

export type MasterAnswer = {
  readonly objective: number
  readonly prices: Float64Array
  readonly values: Float64Array
  readonly work: number
}

/** A linear model whose rows stand and to which columns are added; each solving goes on from the last one's basis. */
export type Master = {
  readonly add: (columns: readonly MasterColumn[]) => void
  /** Sets the most that a column may be, and what it costs. */
  readonly change: (column: number, to: { readonly upper?: number; readonly cost?: number }) => void
  /** Null when it was not solved in time. */
  readonly solve: (timeMs: number) => MasterAnswer | null
  readonly dispose: () => void
}

export type Solver = {
  readonly solve: (model: LinearModel, limits: SolverLimits) => SolverAnswer
  readonly openMaster: (rows: readonly { readonly lower: number; readonly upper: number }[]) => Master
}

let loading: Promise<Highs> | null = null

/** The exact solver, loaded when it is first asked for and kept. */
export async function loadSolver(): Promise<Solver> {
  loading ??= loadHighs()
  const highs = await loading
  return {
    solve: (model, limits) => solve(highs, model, limits),
    openMaster: (rows) => openMaster(highs, rows),
  }
}

function openMaster(
  highs: Highs,
  rows: readonly { readonly lower: number; readonly upper: number }[],
): Master {
  const model = highs.createModel({
    numCols: 0,
    numRows: rows.length,
    colCost: [],
    colLower: [],
    colUpper: [],
    rowLower: rows.map(({ lower }) => lower),
    rowUpper: rows.map(({ upper }) => upper),
    matrix: {
      format: 'csr',
      numRows: rows.length,
      numCols: 0,
      starts: new Int32Array(rows.length + 1),
      indices: [],
      values: [],
    },
  })
  model.options.set({
    output_flag: false,
    presolve: 'off',
    solver: 'simplex',
    random_seed: 1,
    simplex_strategy: 4,
  })
  return {
    add: (columns) => {
      const entries = columns.flatMap((column) => column.entries)
      const starts = [0]
      for (const column of columns) starts.push((starts.at(-1) ?? 0) + column.entries.length)
      model.addCols({
        cost: Float64Array.from(columns, ({ cost }) => cost),
        lower: new Float64Array(columns.length),
        upper: Float64Array.from(columns, ({ upper }) => upper ?? Number.POSITIVE_INFINITY),
        matrix: {
          format: 'csc',
          numRows: rows.length,
          numCols: columns.length,
          starts: Int32Array.from(starts),
          indices: Int32Array.from(entries, ([row]) => row),
          values: Float64Array.from(entries, ([, value]) => value),
        },
      })
    },
    change: (column, { upper, cost }) => {
      if (upper !== undefined) model.changeColBounds(column, 0, upper)
      if (cost !== undefined) model.changeColCost(column, cost)
    },
    solve: (timeMs) => {
      model.zeroAllClocks()
      model.options.set({ time_limit: Math.max(0.001, timeMs / 1000) })
      model.run()
      if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null
      const { colValue, rowDual } = model.getSolution()
      return {
        objective: model.getObjectiveValue(),
        prices: rowDual,
        values: colValue,
        work: Number(model.info.get('simplex_iteration_count')),
      }
    },
    dispose: () => {
      model.dispose()
    },
  }
}

/** Runs HiGHS on one model. It blocks until it is done or a limit is reached. */
function solve(highs: Highs, linear: LinearModel, limits: SolverLimits): SolverAnswer {
  const isMip = !limits.isRelaxed && linear.isWhole.some((isWhole) => isWhole)
  const model = highs.createModel(modelData(linear, isMip))
  try {
    model.options.set({
      output_flag: false,
      time_limit: Math.max(0.001, limits.timeMs / 1000),
      random_seed: Math.abs(limits.seed) % 2147483647,
      mip_rel_gap: 2e-7,
      mip_abs_gap: 1e-7,
      ...(limits.work !== null && !isMip ? { simplex_iteration_limit: limits.work } : {}),
    })
    if (limits.start && isMip)
      model.setSolution({ indices: [...limits.start.keys()], values: [...limits.start.values()] })
    let bound = Number.NEGATIVE_INFINITY
    let work = 0
    const ends = performance.now() + limits.timeMs
    model.run({
      // The time limit alone is looked at too seldom.
      [highs.constants.callbackType.simplexInterrupt](event: Pick<MipEvent, 'interrupt'>) {
        if (performance.now() > ends) event.interrupt()
      },
      [highs.constants.callbackType.mipInterrupt](event: MipEvent) {
        bound = Math.max(bound, event.data.mip_dual_bound ?? bound)
        work = Number(event.data.mip_total_lp_iterations ?? work)
        const isEnough = bound >= (limits.boundWanted ?? Number.POSITIVE_INFINITY)
        const isSpent = limits.work !== null && work > limits.work
        if (isEnough || isSpent || performance.now() > ends) event.interrupt()
      },
    })
    return readAnswer(highs, model, { isMip, bound, work })
  } finally {
    model.dispose()
  }
}

type MipEvent = {
  readonly data: { readonly mip_dual_bound?: number; readonly mip_total_lp_iterations?: bigint }
  readonly interrupt: () => void
}

function modelData(linear: LinearModel, isMip: boolean) {
  return {
    numCols: linear.columns,
    numRows: linear.rows,
    offset: linear.offset,
    colCost: linear.costs,
    colLower: linear.lower,
    colUpper: linear.upper,
    rowLower: linear.rowLower,
    rowUpper: linear.rowUpper,
    matrix: {
      format: 'csr' as const,
      numRows: linear.rows,
      numCols: linear.columns,
      starts: linear.rowStarts,
      indices: linear.entryColumns,
      values: linear.entryValues,
    },
    ...(isMip ? { integrality: Int32Array.from(linear.isWhole, (isWhole) => (isWhole ? 1 : 0)) } : {}),
  }
}

type Model = ReturnType<Highs['createModel']>

function readAnswer(
  highs: Highs,
  model: Model,
  run: { readonly isMip: boolean; readonly bound: number; readonly work: number },
): SolverAnswer {
  const { modelStatus } = highs.constants
  const status = model.getModelStatus()
  const failed = { values: null, objective: Number.POSITIVE_INFINITY, bound: run.bound, work: run.work }
  if (status === modelStatus.infeasible) return { ...failed, status: 'infeasible' }
  const isOptimal = status === modelStatus.optimal
  const work = run.isMip ? run.work : Number(model.info.get('simplex_iteration_count'))
  if (!run.isMip && !isOptimal) return { ...failed, work, status: 'stopped' }
  const hasValues = Number(model.info.get('primal_solution_status')) === 2
  const objective = hasValues ? model.getObjectiveValue() : Number.POSITIVE_INFINITY
  const dual = run.isMip ? Number(model.info.get('mip_dual_bound')) : objective
  return {
    status: isOptimal ? 'optimal' : 'stopped',
    values: hasValues ? Float64Array.from(model.getSolution().colValue) : null,
    objective,
    bound: Math.max(run.bound, Number.isFinite(dual) ? dual : Number.NEGATIVE_INFINITY),
    work,
  }
}
