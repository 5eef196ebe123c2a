import type { Chance } from '#common/chance'
import type { LineUpBoard } from '#lineup/line-up-board'

/** Windows from the first to the last, both included. */
export type WindowRange = { readonly first: number; readonly last: number }

/**
 * Two players give each other their places in some windows, at two times of the match at most; or three hand them on in a
 * ring, at one time.
 */
export type Swap = {
  readonly one: number
  readonly other: number
  /** It gets the one's places, the one the other's, the other its own. */
  readonly third: number | null
  readonly range: WindowRange
  /** Where the one gives back what it took: so both may keep their minutes. */
  readonly second: WindowRange | null
  /** Only lines change hands: windows in which one of them is off are left as they are. */
  readonly onlyLines: boolean
}

/** A swap drawn by chance: mostly at one time, else of lines alone, at two times that do not meet, or of three players. */
export function drawSwap(board: LineUpBoard, chance: Chance): Swap {
  const { playerCount } = board
  const one = Math.floor(chance() * playerCount)
  const other = (one + 1 + Math.floor(chance() * (playerCount - 1))) % playerCount
  const range = drawRange(board, chance)
  const two = { one, other, third: null, range, second: null, onlyLines: false }
  const kind = chance()
  if (kind < 0.6) return two
  if (kind < 0.7) return { ...two, onlyLines: true }
  if (kind < 0.9) {
    const second = drawRange(board, chance)
    const meets = second.first <= range.last && range.first <= second.last
    return meets ? two : { ...two, second }
  }
  const third = Math.floor(chance() * playerCount)
  return third === one || third === other ? two : { ...two, third }
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
