import { balance } from '#ahead/chance/balance'
import type { Came } from '#ahead/chance/dealer'
import type { Desk } from '#ahead/chance/desk'
import type { PracticeToDeal } from '#ahead/chance/practice-to-deal'
import { columnCount } from '#ahead/chance/standing'
import { addMove, type SeatMove } from '#ahead/seat-moves'
import { seatCount } from '#ahead/seat-places'

/** What lies between the plan and an even share counts so much of what is off the plan: those who can best spare give first. */
const insideWeight = 0.25
/** Seconds off the plan that nobody makes good. */
const hair = 1e-6

type Leaning = { readonly came: Came; readonly desk: Desk; readonly gap: Float64Array }

/**
 * Makes good what is off the plan after its own leans: move by move (more of one seat instead of waiting, or of another)
 * everyone wishes what brings it nearest, in squares, and the wishes are made to add up. A gap between an even share and
 * what the plan means after this practice is not off it.
 */
export function leanTowardsPlan(practice: PracticeToDeal, leaning: Leaning): void {
  const { came, desk, gap } = leaning
  for (const move of practice.moves) {
    if (!wishCloser(practice, move, leaning)) continue
    setMoveLimits(move, leaning)
    balance({ count: came.count, ...desk })
    for (let at = 0; at < came.count; at++) {
      const seconds = desk.wish[at] ?? 0
      add(desk.lean, at * seatCount + move.more, seconds)
      if (move.less >= 0) add(desk.lean, at * seatCount + move.less, -seconds)
      else desk.room[at] = Math.max(0, (desk.room[at] ?? 0) - seconds)
      addMove(gap, move, { first: (came.here[at] ?? 0) * columnCount, seconds })
    }
  }
}

/** Fills the wishes of one move; whether anybody is off the plan in what it changes. */
function wishCloser(
  { meant }: PracticeToDeal,
  { changes }: SeatMove,
  { came: { here, count }, desk, gap }: Leaning,
): boolean {
  let squares = 0
  for (const { by } of changes) squares += by * by
  let isAny = false
  for (let at = 0; at < count; at++) {
    const first = (here[at] ?? 0) * columnCount
    let pull = 0
    for (const { place, by } of changes) {
      const own = gap[first + place] ?? 0
      const off = offPlan(own, meant[first + place] ?? 0)
      if (off > hair || off < -hair) isAny = true
      pull += by * (off + insideWeight * (own - off))
    }
    desk.wish[at] = -pull / squares
  }
  return isAny
}

/** How far a gap is from what lies between an even share and what the plan means. */
function offPlan(gap: number, meant: number): number {
  if (meant < 0) return gap < meant ? gap - meant : Math.max(0, gap)
  return gap > meant ? gap - meant : Math.min(0, gap)
}

function setMoveLimits({ more, less }: SeatMove, { came: { count }, desk }: Leaning): void {
  const { lean, least, most, room, low, high } = desk
  for (let at = 0; at < count; at++) {
    const first = at * seatCount
    const up = (most[first + more] ?? 0) - (lean[first + more] ?? 0)
    const down = (least[first + more] ?? 0) - (lean[first + more] ?? 0)
    const spare = less < 0 ? (room[at] ?? 0) : (lean[first + less] ?? 0) - (least[first + less] ?? 0)
    const takes = less < 0 ? Number.NEGATIVE_INFINITY : (lean[first + less] ?? 0) - (most[first + less] ?? 0)
    low[at] = Math.min(0, Math.max(down, takes))
    high[at] = Math.max(0, Math.min(up, spare))
  }
}

function add(list: Float64Array, at: number, seconds: number): void {
  list[at] = (list[at] ?? 0) + seconds
}
