import type { Master, MasterAnswer, Solver } from '#solver/highs'
import { columnOf, type Timetable, type TimetableRows } from '#solver/timetable-rows'

/** A part of all timetables. */
export type Part = {
  /** By player and turn: arcs that may not be used; null: all may. */
  readonly closed: readonly (readonly Uint8Array[])[] | null
  /** By player: least and most of each total (attack, defend, keep, rest); null: any. */
  readonly totals: readonly (readonly TotalRange[])[] | null
}
export type TotalRange = { readonly least: number; readonly most: number }

/** Timetables in a master problem, and what is known from its prices. Values are in units². */
export type Generation = {
  readonly rows: TimetableRows
  readonly master: Master
  readonly timetables: Timetable[]
  /** Which column of the master the first timetable has. */
  readonly firstColumn: number
  readonly keys: Set<string>
  /** The timetables that count now. */
  part: Part
  penalty: number
  /** Where the prices lean. */
  center: Float64Array | null
  near: readonly (readonly number[])[]
}

export type Generated = {
  /** No plan costs less. */
  readonly bound: number
  /** Of the master: no less than the bound, equal when nothing is left to be found. */
  readonly objective: number
  /** How much of each timetable the master takes; empty where it was never solved. */
  readonly values: Float64Array
  /** The prices that the bound comes from, and what each player's part of it is by them. */
  readonly proof: PriceProof | null
  /** Whether some seats are still unfilled in the master. */
  readonly isShort: boolean
  readonly isDone: boolean
}

export type PriceProof = { readonly prices: Float64Array; readonly byPlayer: readonly number[] }

export type GenerationLimits = {
  /** False ends it. */
  readonly mayGoOn: () => boolean
  readonly leftMs: () => number
  /** Told of work done: labels and steps of the simplex method. */
  readonly onWork: (labels: number, steps: number) => void
  /** It may end when the bound has reached this. */
  readonly enough: number
  /** Most labels a turn that are ever kept. */
  readonly mostWidth: number
  readonly mostRounds?: number
}

/**
 * How far prices lean to those of the round before, so that they do not swing from end to end (P. J. Neame,
 * "Nonsmooth dual methods in integer programming", thesis, Melbourne 1999; from memory).
 */
const leaning = 0.5
/** What is tried in turn, as long as nothing is found: prices that lean, then those of the master by ever more labels. */
const quickWidth = 60
const mostWidth = 120_000
const widths = [quickWidth, mostWidth]
const hair = 1e-7
/** What an unfilled seat costs, in squares of the longest turn: more than any price that is likely. */
const seatPenalty = 100

/** A master with the rows of a problem and no timetables yet. Dispose of its `master` afterwards. */
export function openGeneration(solver: Solver, rows: TimetableRows): Generation {
  const master = solver.openMaster(rows.rows)
  const longest = Math.max(...rows.problem.turns.map(({ seconds }) => seconds)) / rows.unitSeconds
  const penalty = seatPenalty * longest ** 2
  const slack = (row: number, value: number) => ({ cost: penalty, entries: [[row, value]] as const })
  master.add(rows.rows.flatMap((_, row) => [slack(row, 1), slack(row, -1)]))
  return {
    rows,
    master,
    timetables: [],
    firstColumn: 2 * rows.rows.length,
    keys: new Set(),
    part: { closed: null, totals: null },
    penalty,
    center: null,
    near: rows.owed.map((owed, player) => balanced(owed, liveOf(rows, player))),
  }
}

function liveOf({ problem, unitSeconds }: TimetableRows, player: number): number {
  return problem.turns.reduce(
    (sum, { seconds }, turn) => sum + (problem.players[player]?.present[turn] ? seconds / unitSeconds : 0),
    0,
  )
}

/** Totals that add up to what the player has, each as far from what is owed. */
function balanced(owed: readonly number[], live: number): readonly number[] {
  const off = (live - owed.reduce((sum, own) => sum + own, 0)) / 4
  return owed.map((own) => own + off)
}

export function addTimetables(generation: Generation, timetables: readonly Timetable[]): number {
  const fresh = timetables.filter((timetable) => {
    const key = `${timetable.player}:${timetable.arcs.join()}`
    if (generation.keys.has(key)) return false
    generation.keys.add(key)
    return true
  })
  if (fresh.length === 0) return 0
  generation.master.add(
    fresh.map((timetable) => ({
      ...columnOf(generation.rows, timetable),
      ...(isOut(generation, timetable) ? { upper: 0 } : {}),
    })),
  )
  generation.timetables.push(...fresh)
  return fresh.length
}

/** Whether a timetable is none of the part that counts now. */
function isOut({ part }: Generation, { player, arcs, totals }: Timetable): boolean {
  const ranges = part.totals?.[player]
  if (ranges?.some(({ least, most }, role) => (totals[role] ?? 0) < least || (totals[role] ?? 0) > most))
    return true
  return part.closed !== null && arcs.some((arc, turn) => part.closed?.[player]?.[turn]?.[arc] === 1)
}

/** Lets only a part of all timetables count, those of the master among them. */
export function enterPart(generation: Generation, part: Part): void {
  generation.part = part
  generation.timetables.forEach((timetable, index) => {
    const upper = isOut(generation, timetable) ? 0 : Number.POSITIVE_INFINITY
    generation.master.change(generation.firstColumn + index, { upper })
  })
}

/**
 * Adds timetables to the master as long as its prices find some that are worth it (G. B. Dantzig & P. Wolfe,
 * "Decomposition principle for linear programs", Oper. Res. 8 (1960) 101-111). Every round of pricing gives a bound
 * (Lagrange), so it may end at any time.
 */
export function generateColumns(generation: Generation, limits: GenerationLimits): Generated {
  const { master } = generation
  let bound = Number.NEGATIVE_INFINITY
  let proof: PriceProof | null = null
  let objective = Number.POSITIVE_INFINITY
  let values = new Float64Array(0)
  let isShort = true
  let isDone = false
  let level = 0
  const mostRounds = limits.mostRounds ?? Number.POSITIVE_INFINITY
  generation.center = null
  for (let round = 0; round < mostRounds && limits.mayGoOn(); round += 1) {
    const answer = master.solve(limits.leftMs())
    if (answer === null) break
    limits.onWork(0, answer.work)
    objective = answer.objective
    values = answer.values.slice(generation.firstColumn)
    isShort = answer.values.subarray(0, generation.firstColumn).some((value) => value > hair)
    generation.near = nearTotals(generation, values)
    generation.center = leant(answer.prices, generation.center)
    const width = Math.min(widths[level] ?? 0, limits.mostWidth)
    const isWidest = width === limits.mostWidth || level === widths.length - 1
    const prices: Float64Array = level === 0 ? generation.center : answer.prices
    const priced = priceAll(generation, { prices, answer, width, limits })
    if (priced === null) break
    if (priced.bound > bound) {
      bound = priced.bound
      proof = { prices, byPlayer: priced.byPlayer }
    }
    const isClosed = objective - bound <= hair * Math.max(1, Math.abs(objective))
    if (bound >= limits.enough) {
      isDone = true
      break
    }
    if (priced.added > 0 && !isClosed) {
      level = 0
      continue
    }
    if (!isWidest && !isClosed) {
      level += 1
      continue
    }
    if (!isShort || generation.penalty > 1e9) {
      isDone = true
      break
    }
    raisePenalty(generation)
    level = 0
  }
  return { bound, objective, values, proof, isShort, isDone }
}

function raisePenalty(generation: Generation): void {
  generation.penalty *= 8
  for (let column = 0; column < generation.firstColumn; column += 1)
    generation.master.change(column, { cost: generation.penalty })
}

function leant(prices: Float64Array, center: Float64Array | null): Float64Array {
  return center === null
    ? prices
    : prices.map((price, row) => leaning * (center[row] as number) + (1 - leaning) * price)
}

/** What the master gives each player of each role on the average; what was near before where it gives none. */
function nearTotals({ timetables, near }: Generation, values: Float64Array): readonly (readonly number[])[] {
  const sums = near.map(() => [0, 0, 0, 0, 0])
  timetables.forEach(({ player, totals }, index) => {
    const value = values[index] ?? 0
    const own = sums[player]
    if (value < hair || !own) return
    totals.forEach((total, role) => {
      own[role] = (own[role] ?? 0) + value * total
    })
    own[4] = (own[4] ?? 0) + value
  })
  return sums.map((own, player) => {
    const weight = own[4] ?? 0
    return weight > 0.5 ? own.slice(0, 4).map((sum) => sum / weight) : (near[player] ?? [])
  })
}

type Priced = {
  readonly bound: number
  readonly byPlayer: readonly number[]
  readonly added: number
}

/** One round of pricing over all players; null when time ran out in it. */
function priceAll(
  generation: Generation,
  at: {
    readonly prices: Float64Array
    readonly answer: MasterAnswer
    readonly width: number
    readonly limits: GenerationLimits
  },
): Priced | null {
  const { rows } = generation
  const { prices, answer, width, limits } = at
  let bound = seatsWorth(rows, prices)
  const fresh: Timetable[] = []
  const byPlayer: number[] = []
  for (const [player, pricer] of rows.pricers.entries()) {
    if (!limits.mayGoOn()) return null
    const own = answer.prices[rows.firstPlayerRow + player] as number
    const isExact = prices === answer.prices
    const found = pricer.search({
      arcCosts: arcCostsOf(generation, player, prices),
      near: generation.near[player] ?? [],
      ranges: generation.part.totals?.[player] ?? null,
      below: isExact ? own - hair : Number.POSITIVE_INFINITY,
      width,
      wanted: 3,
      mayGoOn: limits.mayGoOn,
    })
    limits.onWork(found.labels + (rows.networks[player]?.arcs.length ?? 0) * 20, 0)
    bound += found.bound
    byPlayer.push(found.bound)
    for (const { arcs, totals } of found.found) {
      const timetable = { player, arcs, totals }
      if (isExact || isWorthIt(rows, timetable, answer.prices)) fresh.push(timetable)
    }
  }
  return { bound, byPlayer, added: addTimetables(generation, fresh) }
}

/**
 * The bound that the prices where the search leans give, by every timetable that counts: dearer than a round of
 * pricing, and much higher than the bound of one that looks at few. Null when time ran out.
 */
export function boundAtCenter(
  generation: Generation,
  limits: Pick<GenerationLimits, 'mayGoOn' | 'onWork'>,
): { readonly bound: number; readonly proof: PriceProof } | null {
  const { rows, center: prices, near } = generation
  if (prices === null) return null
  const byPlayer: number[] = []
  for (const [player, pricer] of rows.pricers.entries()) {
    const wish = {
      arcCosts: arcCostsOf(generation, player, prices),
      ranges: generation.part.totals?.[player] ?? null,
      near: near[player] ?? [],
      wanted: 4,
      mayGoOn: limits.mayGoOn,
    }
    const few = pricer.search({ ...wish, width: quickWidth, below: Number.POSITIVE_INFINITY })
    // What costs no less than a timetable that is known need not be looked at.
    const below = (few.found[0]?.cost ?? Number.POSITIVE_INFINITY) + hair
    const all = pricer.search({ ...wish, width: mostWidth, below })
    limits.onWork(few.labels + all.labels, 0)
    if (!limits.mayGoOn()) return null
    byPlayer.push(Math.max(few.bound, all.bound))
  }
  const bound = byPlayer.reduce((sum, own) => sum + own, seatsWorth(rows, prices))
  return { bound, proof: { prices, byPlayer } }
}

/** What all seats together earn by the prices. */
function seatsWorth(rows: TimetableRows, prices: Float64Array): number {
  return rows.rows.reduce(
    (sum, { lower, upper }, row) =>
      row < rows.firstPlayerRow
        ? sum + (prices[row] as number) * (Number.isFinite(lower) ? lower : upper)
        : sum,
    0,
  )
}

function isWorthIt(rows: TimetableRows, timetable: Timetable, prices: Float64Array): boolean {
  const { cost, entries } = columnOf(rows, timetable)
  return entries.reduce((left, [row, value]) => left - value * (prices[row] as number), cost) < -hair
}

export function arcCostsOf(
  { rows, part }: Pick<Generation, 'rows' | 'part'>,
  player: number,
  prices: Float64Array,
): readonly Float64Array[] {
  return (rows.entries[player] ?? []).map((arcs, turn) =>
    Float64Array.from(arcs, (entries, arc) => {
      if (part.closed?.[player]?.[turn]?.[arc]) return Number.POSITIVE_INFINITY
      let cost = 0
      for (const [row, value] of entries) cost -= value * (prices[row] as number)
      return cost
    }),
  )
}
