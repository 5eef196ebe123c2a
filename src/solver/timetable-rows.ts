import { owedSeconds } from '#rotation/first-plan'
import { restLimitOf } from '#rotation/limits'
import type { MayTake } from '#rotation/may-take'
import type { RotationProblem } from '#rotation/problem'
import { type DutyTable, keeperDuties } from '#solver/keeper-duties'
import { labelPool } from '#solver/label-pool'
import { type Arc, onDuty, openSeats, type PlayerNetwork, playerNetwork } from '#solver/player-network'
import { type Pricer, pricerOf } from '#solver/price-timetable'

type Entry = readonly [number, number]

/**
 * A problem as timetables of single players that must fill the seats together: the rows that tie them, and for each
 * arc of each player's network its entries in those rows.
 */
export type TimetableRows = {
  readonly problem: RotationProblem
  readonly unitSeconds: number
  readonly table: DutyTable
  readonly networks: readonly PlayerNetwork[]
  readonly pricers: readonly Pricer[]
  /** By player: what is owed of each role, in units. */
  readonly owed: readonly (readonly number[])[]
  readonly rows: readonly { readonly lower: number; readonly upper: number }[]
  /** Rows from here on are one for each player: one timetable in all. */
  readonly firstPlayerRow: number
  /** By player, turn and arc. */
  readonly entries: readonly (readonly (readonly (readonly Entry[])[])[])[]
}

/** `restLimit` is that of the timetables, not the problem's. */
export function timetableRows(
  problem: RotationProblem,
  mayTake: MayTake,
  restLimit: number | null,
): TimetableRows {
  const table = keeperDuties(problem, mayTake)
  const unitSeconds = Math.max(
    1,
    problem.turns.reduce((unit, { seconds }) => commonDivisor(unit, seconds), 0),
  )
  // Who waits longer by agreement has timetables that others have not: without them no bound would hold.
  const networks = problem.players.map((own, player) => {
    const limit = restLimit === null ? Number.POSITIVE_INFINITY : restLimitOf(own, restLimit)
    return playerNetwork(problem, {
      mayTake,
      table,
      player,
      restLimit: Number.isFinite(limit) ? limit : null,
    })
  })
  const all = owedSeconds(problem)
  const owed = problem.players.map((_, player) =>
    [0, 1, 2, 3].map((role) => (all[player * 4 + role] as number) / unitSeconds),
  )
  const rows: { lower: number; upper: number }[] = []
  const addRow = (lower: number, upper: number) => rows.push({ lower, upper }) - 1
  const seatRows = problem.turns.map((_, turn) =>
    openSeats(problem, table, turn).map((seats) => (seats === 0 ? -1 : addRow(seats, seats))),
  )
  const chainRows = new Map<string, number>()
  for (const { chain, from } of table.duties) {
    const key = `${chain} ${from}`
    const started = from === 0 ? 1 : 0
    if (!chainRows.has(key)) chainRows.set(key, addRow(started, started))
  }
  const apartRows = problem.apart.map((pair) =>
    problem.turns.map(({ stations }, turn) => {
      const isThere = pair.every((player) => problem.players[player]?.present[turn])
      return stations.length === 1 && isThere ? addRow(Number.NEGATIVE_INFINITY, 1) : -1
    }),
  )
  const firstPlayerRow = rows.length
  for (const _ of problem.players) addRow(1, 1)
  const entries = networks.map((network) =>
    network.arcs.map((arcs, turn) =>
      arcs.map((arc) => entriesOf(arc, { network, turn, problem, seatRows, chainRows, apartRows })),
    ),
  )
  const pool = labelPool()
  const pricers = networks.map((network, player) =>
    pricerOf(problem, network, { unitSeconds, owed: owed[player] ?? [], pool }),
  )
  return { problem, unitSeconds, table, networks, pricers, owed, rows, firstPlayerRow, entries }
}

function entriesOf(
  { kind, starts }: Arc,
  at: {
    readonly network: PlayerNetwork
    readonly turn: number
    readonly problem: RotationProblem
    readonly seatRows: readonly (readonly number[])[]
    readonly chainRows: ReadonlyMap<string, number>
    readonly apartRows: readonly (readonly number[])[]
  },
): readonly Entry[] {
  const { network, turn, problem, seatRows, chainRows, apartRows } = at
  const entries: Entry[] = []
  if (kind < 3) entries.push([seatRows[turn]?.[kind] ?? -1, 1])
  for (const start of starts) {
    const duty = network.duties[start]
    if (!duty) continue
    entries.push([chainRows.get(`${duty.chain} ${duty.from}`) ?? -1, 1])
    entries.push([chainRows.get(`${duty.chain} ${duty.until}`) ?? -1, -1])
  }
  if (kind < 3 || kind === onDuty)
    problem.apart.forEach((pair, index) => {
      if (pair.includes(network.player)) entries.push([apartRows[index]?.[turn] ?? -1, 1])
    })
  return entries.filter(([row]) => row >= 0)
}

/** A timetable of one player: an arc a turn. */
export type Timetable = {
  readonly player: number
  readonly arcs: readonly number[]
  readonly totals: readonly number[]
}

/** What a timetable costs (its squares, in units²) and its entries in the rows, its player's own among them. */
export function columnOf(
  rows: TimetableRows,
  { player, arcs, totals }: Timetable,
): { readonly cost: number; readonly entries: readonly Entry[] } {
  const sums = new Map<number, number>([[rows.firstPlayerRow + player, 1]])
  arcs.forEach((arc, turn) => {
    for (const [row, value] of rows.entries[player]?.[turn]?.[arc] ?? [])
      sums.set(row, (sums.get(row) ?? 0) + value)
  })
  const owed = rows.owed[player] ?? []
  const cost = totals.reduce((sum, total, role) => sum + (total - (owed[role] ?? 0)) ** 2, 0)
  return { cost, entries: [...sums].filter(([, value]) => value !== 0) }
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}
