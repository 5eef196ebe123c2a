import { type LineUpBoard, offPlace } from '#lineup/line-up-board'
import { rowFields, rowLength, rowReader } from '#lineup/row-values'
import type { Swap } from '#lineup/swap'
import { maySwap, secondsGained, swapPlaces } from '#lineup/swap-places'

/** A board with what every row comes to, on which swaps are tried. */
export type SwapBoard = {
  readonly board: LineUpBoard
  readonly mayTry: (swap: Swap) => boolean
  /** No rule is broken and no promise missed: nothing above minutes could get better. */
  readonly isClean: () => boolean
  /** How much less even minutes would be, without trying; for three players, nothing is said: 0. */
  readonly lessEven: (swap: Swap) => number
  /** What a swap would change, by field of a row; the board stays swapped until `undo`, and `keep` makes it last. */
  readonly tryOut: (swap: Swap) => Float64Array
  readonly keep: (swap: Swap) => void
  readonly undo: (swap: Swap) => void
  /** What the whole board comes to. */
  readonly total: () => Float64Array
}

/** Weight of a second together for the tidying field. */
const togetherWeight = 1 / 100

export function swapBoard(board: LineUpBoard): SwapBoard {
  const read = rowReader(board)
  const rows = new Float64Array(board.playerCount * rowLength)
  const fresh = new Float64Array(3 * rowLength)
  const into = [0, 1, 2].map((index) => fresh.subarray(index * rowLength, (index + 1) * rowLength))
  const change = new Float64Array(rowLength)
  const sum = new Float64Array(rowLength)
  for (let player = 0; player < board.playerCount; player += 1) {
    const row = rows.subarray(player * rowLength, (player + 1) * rowLength)
    read(player, row)
    addTo(sum, row)
  }
  const left = Float64Array.from({ length: board.playerCount }, (_, player) => dueLeft(board, player))
  let across = acrossRows(board, sum)
  let acrossAfter = across

  const readRow = (player: number, index: 0 | 1 | 2) => {
    const row = into[index] as Float64Array
    read(player, row)
    for (let field = 0; field < rowLength; field += 1)
      change[field] =
        (change[field] as number) + (row[field] as number) - (rows[player * rowLength + field] as number)
  }

  return {
    board,
    mayTry: (swap) => maySwap(board, swap),
    isClean: () =>
      (sum[rowFields.broken] as number) + across.broken < 1e-6 && (sum[rowFields.promise] as number) < 1e-6,
    lessEven: (swap) => {
      const gained = secondsGained(board, swap)
      if (!gained) return 0
      // (a − g)² − a² + (b + g)² − b², with what each is still due.
      const [due, otherDue] = [left[swap.one] as number, left[swap.other] as number]
      return 2 * gained * (gained - due + otherDue)
    },
    tryOut: (swap) => {
      swapPlaces(board, swap, 'make')
      change.fill(0)
      readRow(swap.one, 0)
      readRow(swap.other, 1)
      if (swap.third !== null) readRow(swap.third, 2)
      acrossAfter = acrossRows(board, sum, change)
      change[rowFields.broken] = (change[rowFields.broken] as number) + acrossAfter.broken - across.broken
      change[rowFields.tidy] = (change[rowFields.tidy] as number) + acrossAfter.tidy - across.tidy
      return change
    },
    keep: ({ one, other, third }) => {
      change[rowFields.broken] = (change[rowFields.broken] as number) + across.broken - acrossAfter.broken
      change[rowFields.tidy] = (change[rowFields.tidy] as number) + across.tidy - acrossAfter.tidy
      addTo(sum, change)
      across = acrossAfter
      left[one] = dueLeft(board, one)
      left[other] = dueLeft(board, other)
      if (third !== null) left[third] = dueLeft(board, third)
      rows.set(into[0] as Float64Array, one * rowLength)
      rows.set(into[1] as Float64Array, other * rowLength)
      if (third !== null) rows.set(into[2] as Float64Array, third * rowLength)
    },
    undo: (swap) => swapPlaces(board, swap, 'takeBack'),
    total: () => {
      const total = sum.slice()
      total[rowFields.broken] = (total[rowFields.broken] as number) + across.broken
      total[rowFields.tidy] = (total[rowFields.tidy] as number) + across.tidy
      return total
    },
  }
}

/** Seconds that a player is due beyond what it plays. */
function dueLeft({ problem, fair, places, seconds, windowCount }: LineUpBoard, player: number): number {
  let due = (problem.players[player]?.owed.playSeconds ?? 0) + (fair.play[player] ?? 0)
  for (let window = 0; window < windowCount; window += 1)
    if (places[player * windowCount + window] !== offPlace) due -= seconds[window] as number
  return due
}

type Across = { readonly broken: number; readonly tidy: number }
const nothing: Across = { broken: 0, tidy: 0 }

/** What no single row shows: too many changes or comings on in all, pairs that meet, pairs that do not. */
function acrossRows(board: LineUpBoard, sum: Float64Array, change?: Float64Array): Across {
  const { rules, apart, together } = board.problem
  const { mostChanges, mostSubstitutions } = rules
  if (mostChanges === null && mostSubstitutions === null && apart.length + together.length === 0)
    return nothing
  const of = (field: number) => (sum[field] as number) + (change ? (change[field] as number) : 0)
  const beyond = (count: number, most: number | null) => (most === null ? 0 : Math.max(0, count - most))
  let broken = beyond(of(rowFields.changes), mostChanges) + beyond(of(rowFields.comings), mostSubstitutions)
  let tidy = 0
  for (const pair of apart) broken += windowsTogether(board, pair, false)
  for (const pair of together) tidy -= windowsTogether(board, pair, true) * togetherWeight
  return { broken, tidy }
}

/** Windows in which both of a pair are on, or the seconds of them. */
function windowsTogether(
  { places, windowCount, seconds }: LineUpBoard,
  [one, other]: readonly [number, number],
  inSeconds: boolean,
): number {
  let sum = 0
  for (let window = 0; window < windowCount; window += 1) {
    const bothAreOn =
      places[one * windowCount + window] !== offPlace && places[other * windowCount + window] !== offPlace
    if (bothAreOn) sum += inSeconds ? (seconds[window] as number) : 1
  }
  return sum
}

function addTo(sum: Float64Array, part: Float64Array) {
  for (let field = 0; field < rowLength; field += 1)
    sum[field] = (sum[field] as number) + (part[field] as number)
}
