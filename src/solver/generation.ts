import type { Master, Solver } from '#solver/highs'
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

/** Makes unfilled seats dearer. */
export function raisePenalty(generation: Generation): void {
  generation.penalty *= 8
  for (let column = 0; column < generation.firstColumn; column += 1)
    generation.master.change(column, { cost: generation.penalty })
}

/** What each arc of a player costs: nothing, less what it earns by the prices; infinitely much where it is closed. */
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
