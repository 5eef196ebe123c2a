import { type FairLineUp, fairLineUp } from '#lineup/fair-line-up'
import type { LineUpPlan } from '#lineup/line-up'
import { isPeriodRunning } from '#lineup/period-running'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { roomInLines } from '#lineup/room-in-lines'
import { type FieldLine, fieldLines } from '#match/format/line-wish'
import { type Line, lines } from '#match/match'

/** Off is the last of the places: 0 to 3 are the lines in their order. */
export const offPlace = lines.length

/** A problem laid out in flat lists for search, and the place of each player in each window: `[player * windows + window]`. */
export type LineUpBoard = {
  readonly problem: LineUpProblem
  readonly playerCount: number
  readonly windowCount: number
  readonly seconds: Int32Array
  readonly period: Int32Array
  readonly isRunning: boolean
  /** Which places a player may have in a window: bit 0 to 4 by place. */
  readonly allowed: Uint8Array
  readonly fair: FairLineUp
  /** Beyond these seconds a line is more than an even share: `[player * 3 + field line]`. */
  readonly room: Float64Array
  readonly places: Uint8Array
}

export function boardOf(problem: LineUpProblem): LineUpBoard {
  const playerCount = problem.players.length
  const windowCount = problem.windows.length
  const fair = fairLineUp(problem)
  const rooms = roomInLines(problem, fair)
  return {
    problem,
    playerCount,
    windowCount,
    seconds: Int32Array.from(problem.windows, windowSeconds),
    period: Int32Array.from(problem.windows, ({ period }) => period),
    isRunning: isPeriodRunning(problem),
    allowed: allowedPlaces(problem),
    fair,
    room: Float64Array.from(rooms.flatMap((room) => fieldLines.map((line) => room[line]))),
    places: new Uint8Array(playerCount * windowCount).fill(offPlace),
  }
}

/** What single places forbid: absence, goal, lines not yet played, held places. */
export function allowedPlaces(problem: LineUpProblem): Uint8Array {
  const off = 1 << offPlace
  const count = problem.windows.length
  const allowed = new Uint8Array(problem.players.length * count)
  for (const [player, { keeps, isThere, wishes }] of problem.players.entries()) {
    const field = fieldLines.reduce(
      (bits, line) => (wishes[line] === 'notYet' ? bits : bits | bitOf(line)),
      0,
    )
    const on = field | (keeps ? bitOf('keeper') : 0)
    for (let window = 0; window < count; window += 1) {
      allowed[player * count + window] = isThere[window] ? on | off : off
    }
  }
  for (const { player, window, place } of problem.fixed) {
    const held = place === 'off' ? off : place === 'on' ? off - 1 : bitOf(place)
    const at = player * count + window
    if (at < allowed.length) allowed[at] = (allowed[at] ?? 0) & held
  }
  return allowed
}

function bitOf(line: Line | FieldLine): number {
  return 1 << lines.indexOf(line)
}

export function planOfBoard({ playerCount, windowCount, places }: LineUpBoard): LineUpPlan {
  return Array.from({ length: playerCount }, (_, player) =>
    Array.from(
      places.subarray(player * windowCount, (player + 1) * windowCount),
      (place) => lines[place] ?? null,
    ),
  )
}
