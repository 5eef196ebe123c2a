import type { Chance } from '#common/chance'
import { type LineUpBoard, offPlace } from '#lineup/line-up-board'
import { rowFields, rowLength, rowReader } from '#lineup/row-values'

/** Windows from the first to the last, both included. */
export type WindowRange = { readonly first: number; readonly last: number }

/** Two players give each other their places in some windows, at two times of the match at most. */
export type Swap = {
  readonly one: number
  readonly other: number
  readonly range: WindowRange
  /** Where the one gives back what it took: so both may keep their minutes. */
  readonly second: WindowRange | null
}

/** A board with what every row comes to, on which swaps are tried. */
export type SwapBoard = {
  readonly board: LineUpBoard
  /** Whether both may have each other's places, and any differ. */
  readonly mayTry: (swap: Swap) => boolean
  /** What a swap would change, by field of a row; the board stays swapped until `undo`, and is kept by `keep`. */
  readonly tryOut: (swap: Swap) => Float64Array
  readonly keep: (swap: Swap) => void
  readonly undo: (swap: Swap) => void
  /** What the whole board comes to. */
  readonly total: () => Float64Array
}

/** Weight of a second together for the tidying field. */
const togetherWeight = 1 / 100

export function swapBoard(board: LineUpBoard): SwapBoard {
  const { problem, playerCount, windowCount, places, allowed } = board
  const read = rowReader(board)
  const rows = new Float64Array(playerCount * rowLength)
  const fresh = [new Float64Array(rowLength), new Float64Array(rowLength)] as const
  const change = new Float64Array(rowLength)
  const { mostChanges, mostSubstitutions } = problem.rules
  const apart = partnersOf(playerCount, problem.apart)
  const together = partnersOf(playerCount, problem.together)
  let changes = 0
  let comings = 0
  for (let player = 0; player < playerCount; player += 1) {
    read(player, fresh[0])
    rows.set(fresh[0], player * rowLength)
    changes += fresh[0][rowFields.changes] ?? 0
    comings += fresh[0][rowFields.comings] ?? 0
  }
  const beyond = (count: number, most: number | null) => (most === null ? 0 : Math.max(0, count - most))

  const exchangeIn = (one: number, other: number, { first, last }: WindowRange) => {
    for (let window = first; window <= last; window += 1) {
      const [at, to] = [one * windowCount + window, other * windowCount + window]
      const place = places[at] as number
      places[at] = places[to] as number
      places[to] = place
    }
  }
  const exchange = ({ one, other, range, second }: Swap) => {
    exchangeIn(one, other, range)
    if (second) exchangeIn(one, other, second)
  }
  const differs = (one: number, other: number, { first, last }: WindowRange): boolean => {
    let any = false
    for (let window = first; window <= last; window += 1) {
      const [at, to] = [one * windowCount + window, other * windowCount + window]
      const [here, there] = [places[at] as number, places[to] as number]
      if (here === there) continue
      any = true
      if (((allowed[at] as number) & (1 << there)) === 0 || ((allowed[to] as number) & (1 << here)) === 0)
        return false
    }
    return any
  }
  /** Windows in which a player is on at the same time as one of a list, weighed; one of them left out. */
  const meetings = (player: number, partners: readonly number[], without: number, weigh: boolean) => {
    let count = 0
    for (const partner of partners) {
      if (partner === without) continue
      for (let window = 0; window < windowCount; window += 1) {
        const both =
          places[player * windowCount + window] !== offPlace &&
          places[partner * windowCount + window] !== offPlace
        if (both) count += weigh ? (board.seconds[window] as number) : 1
      }
    }
    return count
  }
  const pairs = ({ one, other }: Swap, sign: 1 | -1) => {
    const [oneApart, otherApart] = [apart[one] ?? [], apart[other] ?? []]
    if (oneApart.length + otherApart.length > 0) {
      const met = meetings(one, oneApart, other, false) + meetings(other, otherApart, one, false)
      change[rowFields.broken] = (change[rowFields.broken] as number) + sign * met
    }
    const [oneTogether, otherTogether] = [together[one] ?? [], together[other] ?? []]
    if (oneTogether.length + otherTogether.length > 0) {
      const met = meetings(one, oneTogether, other, true) + meetings(other, otherTogether, one, true)
      change[rowFields.moves] = (change[rowFields.moves] as number) - sign * met * togetherWeight
    }
  }

  return {
    board,
    mayTry: ({ one, other, range, second }) =>
      differs(one, other, range) && (second === null || differs(one, other, second)),
    tryOut: (swap) => {
      change.fill(0)
      pairs(swap, -1)
      exchange(swap)
      pairs(swap, 1)
      read(swap.one, fresh[0])
      read(swap.other, fresh[1])
      const [one, other] = [swap.one * rowLength, swap.other * rowLength]
      for (let field = 0; field < rowLength; field += 1) {
        change[field] =
          (change[field] as number) +
          (fresh[0][field] as number) +
          (fresh[1][field] as number) -
          (rows[one + field] as number) -
          (rows[other + field] as number)
      }
      const moreChanges = changes + (change[rowFields.changes] as number)
      const moreComings = comings + (change[rowFields.comings] as number)
      change[rowFields.broken] =
        (change[rowFields.broken] as number) +
        beyond(moreChanges, mostChanges) -
        beyond(changes, mostChanges) +
        beyond(moreComings, mostSubstitutions) -
        beyond(comings, mostSubstitutions)
      return change
    },
    keep: ({ one, other }) => {
      changes += change[rowFields.changes] as number
      comings += change[rowFields.comings] as number
      rows.set(fresh[0], one * rowLength)
      rows.set(fresh[1], other * rowLength)
    },
    undo: exchange,
    total: () => {
      const sum = new Float64Array(rowLength)
      for (let at = 0; at < rows.length; at += 1)
        sum[at % rowLength] = (sum[at % rowLength] as number) + (rows[at] as number)
      let met = 0
      let side = 0
      for (let player = 0; player < playerCount; player += 1) {
        met += meetings(player, apart[player] ?? [], -1, false) / 2
        side += meetings(player, together[player] ?? [], -1, true) / 2
      }
      sum[rowFields.broken] =
        (sum[rowFields.broken] as number) +
        met +
        beyond(changes, mostChanges) +
        beyond(comings, mostSubstitutions)
      sum[rowFields.moves] = (sum[rowFields.moves] as number) - side * togetherWeight
      return sum
    },
  }
}

/** A swap drawn by chance, at one time of the match or at two that do not meet. */
export function drawSwap(board: LineUpBoard, chance: Chance): Swap {
  const { playerCount } = board
  const one = Math.floor(chance() * playerCount)
  const other = (one + 1 + Math.floor(chance() * (playerCount - 1))) % playerCount
  const range = drawRange(board, chance)
  if (chance() < 0.6) return { one, other, range, second: null }
  const second = drawRange(board, chance)
  const meets = second.first <= range.last && range.first <= second.last
  return { one, other, range, second: meets ? null : second }
}

/** One window, some of one period in a row, or a whole period. */
function drawRange({ windowCount, period }: LineUpBoard, chance: Chance): WindowRange {
  let first = Math.floor(chance() * windowCount)
  let last = first
  const kind = chance()
  if (kind < 0.25) {
    while (first > 0 && period[first - 1] === period[last]) first -= 1
    while (last < windowCount - 1 && period[last + 1] === period[first]) last += 1
  } else if (kind < 0.6) {
    while (last < windowCount - 1 && period[last + 1] === period[first] && chance() < 0.6) last += 1
  }
  return { first, last }
}

function partnersOf(
  playerCount: number,
  pairs: readonly (readonly [number, number])[],
): readonly (readonly number[])[] {
  const partners: number[][] = Array.from({ length: playerCount }, () => [])
  for (const [one, other] of pairs) {
    partners[one]?.push(other)
    partners[other]?.push(one)
  }
  return partners
}
