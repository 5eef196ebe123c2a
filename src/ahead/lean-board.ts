import { slopeOfGap, slopeOfShort } from '#ahead/bent-cost'
import { evenState } from '#ahead/even-state'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { noSeats, type SeatColumn, seatColumns } from '#ahead/seat-column'
import { addMove, type SeatMove } from '#ahead/seat-moves'
import { rotationColumns } from '#rotation/problem'

const [columns, figures] = [seatColumns.length, rotationColumns.length]
/** Steps and gains smaller than these are none. */
const [leastStep, leastGain] = [0.01, 1e-6]
const mostStepsOfAMove = 4
const halvings = 6

/** How much of a practice's even share may be leaned on: `gentle` in each practice, or over all of them alone. */
export type LeanReach = 'inEach' | 'overAll'

/** Leans being made for chosen offers. Whatever is done to them, they can be played. */
export type LeanBoard = {
  /**
   * Once through all practices, pairs of players exchanging what makes the plan better, with bends of its value
   * rounded off over so many seconds. How many seconds were exchanged.
   */
  readonly sweep: (reach: LeanReach, rounded: number) => number
  readonly leans: () => AheadPlan['leans']
}

export function leanBoard(problem: AheadProblem, choices: AheadChoices): LeanBoard {
  const { players, practices, gentle } = problem
  const count = players.length
  const state = evenState(problem, choices)
  const { gap, tolerance, share, themeTolerance, short, even, waits, allEven, meets, moves } = state
  const [lean, allLean] = [new Float64Array(even.length), new Float64Array(allEven.length)]

  /** What a second more of a move costs a player once it has taken so many (negative: given) in the practice at hand. */
  function slopeFor(move: SeatMove, player: number, taken: number): number {
    const base = player * figures
    let slope = 0
    for (const { place, by } of move.changes)
      slope += by * slopeOfGap((gap[base + place] ?? 0) + by * taken, tolerance[base + place] ?? 0, width)
    if (move.less >= 0) return slope
    return slope + (taken === 0 ? (playsSlope[player] ?? 0) : themesSlope(player, taken))
  }

  /** Of it, what a second of playing costs in themes; told anew where it changes. */
  const playsSlope = new Float64Array(count)
  /** By how much a theme's shortfall rises with a second of playing in the practice at hand. */
  const rates = new Float64Array(share.length)
  let width = 1
  function enter(at: number): void {
    rates.set(share)
    for (const place of meets[at] ?? []) rates[place] = (share[place] ?? 0) - 1
    for (let player = 0; player < count; player++) playsSlope[player] = themesSlope(player, 0)
  }
  function themesSlope(player: number, taken: number): number {
    const limit = themeTolerance[player] ?? 0
    const base = player * rates.length
    let slope = 0
    for (let place = 0; place < rates.length; place++) {
      const rate = rates[place] ?? 0
      slope += rate * slopeOfShort((short[base + place] ?? 0) + rate * taken, limit, width)
    }
    return slope
  }

  /** How far it pays that one takes from another, at most `most`. */
  function stepOf(
    move: SeatMove,
    { taker, giver, most }: { readonly taker: number; readonly giver: number; readonly most: number },
  ): number {
    if (slopeOfExchange(move, taker, giver, most) <= 0) return most
    let low = 0
    let high = most
    for (let halved = 0; halved < halvings; halved++) {
      const middle = (low + high) / 2
      if (slopeOfExchange(move, taker, giver, middle) <= 0) low = middle
      else high = middle
    }
    return low
  }
  function slopeOfExchange(move: SeatMove, taker: number, giver: number, step: number): number {
    return slopeFor(move, taker, step) - slopeFor(move, giver, -step)
  }

  /** How much more of a seat column a player may get (`sign` 1), or less. */
  function limitOf(at: number, column: number, player: number, sign: 1 | -1, reach: LeanReach): number {
    const here = (at * count + player) * columns + column
    const all = player * columns + column
    const part = sign > 0 ? gentle.most - 1 : 1 - gentle.least
    let most = part * (allEven[all] ?? 0) - sign * (allLean[all] ?? 0)
    if (sign < 0) most = Math.min(most, (even[here] ?? 0) + (lean[here] ?? 0))
    if (reach === 'inEach') most = Math.min(most, part * (even[here] ?? 0) - sign * (lean[here] ?? 0))
    return most
  }
  function mayTake(at: number, move: SeatMove, player: number, sign: 1 | -1, reach: LeanReach): number {
    const own = limitOf(at, move.more, player, sign, reach)
    if (move.less >= 0) return Math.min(own, limitOf(at, move.less, player, sign > 0 ? -1 : 1, reach))
    return sign > 0 ? Math.min(own, waits[at * count + player] ?? 0) : own
  }

  function take(at: number, move: SeatMove, player: number, seconds: number): void {
    addMove(gap, move, { first: player * figures, seconds })
    addLean(at, move.more, player, seconds)
    if (move.less >= 0) {
      addLean(at, move.less, player, -seconds)
      return
    }
    waits[at * count + player] = (waits[at * count + player] ?? 0) - seconds
    for (let place = 0; place < share.length; place++) {
      const index = player * share.length + place
      short[index] = (short[index] ?? 0) + (rates[place] ?? 0) * seconds
    }
    playsSlope[player] = themesSlope(player, 0)
  }
  function addLean(at: number, column: number, player: number, seconds: number): void {
    const here = (at * count + player) * columns + column
    lean[here] = (lean[here] ?? 0) + seconds
    const all = player * columns + column
    allLean[all] = (allLean[all] ?? 0) + seconds
  }

  /** The pair that gains most by exchanging goes as far as its gain lasts. */
  function exchange(at: number, move: SeatMove, reach: LeanReach): number {
    let [taker, giver] = [-1, -1]
    let [takes, gives] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
    for (let player = 0; player < count; player++) {
      const slope = slopeFor(move, player, 0)
      if (slope < takes && mayTake(at, move, player, 1, reach) > leastStep) {
        taker = player
        takes = slope
      }
      if (-slope < gives && mayTake(at, move, player, -1, reach) > leastStep) {
        giver = player
        gives = -slope
      }
    }
    // One and the same is best at both only where both cost it nothing or more.
    if (taker < 0 || giver < 0 || taker === giver || takes + gives > -leastGain) return 0
    const most = Math.min(mayTake(at, move, taker, 1, reach), mayTake(at, move, giver, -1, reach))
    const step = stepOf(move, { taker, giver, most })
    if (!(step > leastStep)) return 0
    take(at, move, taker, step)
    take(at, move, giver, -step)
    return step
  }

  return {
    sweep: (reach, rounded) => {
      width = rounded
      let gained = 0
      for (let at = 0; at < practices.length; at++) {
        enter(at)
        for (const move of moves[at] ?? [])
          for (let step = 0; step < mostStepsOfAMove; step++) {
            const gain = exchange(at, move, reach)
            if (gain === 0) break
            gained += gain
          }
      }
      return gained
    },
    leans: () =>
      practices.map((_, at) =>
        players.map((_, player) => {
          const own: Record<SeatColumn, number> = { ...noSeats }
          seatColumns.forEach((column, index) => {
            own[column] = lean[(at * count + player) * columns + index] ?? 0
          })
          return own
        }),
      ),
  }
}
