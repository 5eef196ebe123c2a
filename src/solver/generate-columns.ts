import { addTimetables, arcCostsOf, type Generation, raisePenalty } from '#solver/generation'
import type { MasterAnswer } from '#solver/highs'
import { columnOf, type Timetable, type TimetableRows } from '#solver/timetable-rows'

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
