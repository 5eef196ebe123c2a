import type { Seconds } from '#common/time'
import { fairLineUp } from '#lineup/fair-line-up'
import { movePrice } from '#lineup/line-up-values'
import { placeSeconds } from '#lineup/place-seconds'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { roomInLines } from '#lineup/room-in-lines'
import { type FieldLine, fieldLines } from '#match/format/line-wish'
import type { Term } from '#solver/line-up-class-columns'
import type { LineUpModel } from '#solver/line-up-model'
import { offField, onField } from '#solver/row-state'

/** So many seconds in a line, each of which costs so much; the dearer ones follow the cheaper. */
export type LinePart = { readonly seconds: Seconds; readonly cost: number }

/**
 * Time of a player in a line, in parts of rising cost: with room, the step that goes beyond it, and what is beyond. Only
 * some times can come about, so the step in the middle costs by the part of it that is beyond.
 */
export function lineParts(room: number, times: readonly Seconds[]): readonly LinePart[] {
  const longest = times.at(-1) ?? 0
  if (room >= longest) return [{ seconds: longest, cost: 0 }]
  const within = times.findLast((time) => time <= room + 1e-9) ?? 0
  const next = times.find((time) => time > within) ?? longest
  const parts = [
    { seconds: within, cost: 0 },
    { seconds: next - within, cost: Math.max(0, next - room) / Math.max(1, next - within) },
    { seconds: longest - next, cost: 1 },
  ]
  return parts.filter(({ seconds }) => seconds > 0)
}

/** Times that some windows of a match can come to, rising. */
export function timesInLine({ windows }: LineUpProblem): readonly Seconds[] {
  let sums = new Set([0])
  for (const window of windows) sums = new Set([...sums].flatMap((sum) => [sum, sum + windowSeconds(window)]))
  return [...sums].sort((one, other) => one - other)
}

/**
 * How much of each line each class has in all, window by window left aside: no line-up has less beyond even shares than
 * these columns say. Returns what counts as beyond, over the longest window.
 */
export function addLineShares({ linear, problem, classes }: LineUpModel): readonly Term[] {
  const rooms = roomInLines(problem, fairLineUp(problem))
  const times = timesInLine(problem)
  const longest = Math.max(1, ...problem.windows.map(windowSeconds))
  const inLine: Record<FieldLine, Term[]> = { back: [], middle: [], forward: [] }
  const beyond: Term[] = []
  for (const { members, network, firstArc } of classes) {
    const player = members[0] ?? 0
    const own: Term[] = network.arcs.map(({ first, places }, index) => {
      const played = places.reduce(
        (sum, place, at) => (place === onField ? sum + secondsAt(problem, first + at) : sum),
        0,
      )
      return [firstArc + index, -played / longest]
    })
    for (const [index, { places }] of network.arcs.entries()) {
      const moves = movesWithGoal(places)
      if (moves > 0) beyond.push([firstArc + index, (moves * movePrice) / longest])
    }
    for (const line of fieldLines) {
      if (problem.players[player]?.wishes[line] === 'notYet') continue
      for (const { seconds, cost } of lineParts(rooms[player]?.[line] ?? 0, times)) {
        const column = linear.addColumn({ upper: (members.length * seconds) / longest, isWhole: false })
        own.push([column, 1])
        inLine[line].push([column, 1])
        if (cost > 0) beyond.push([column, cost])
      }
    }
    linear.addRow({ lower: 0, upper: 0 }, own)
  }
  for (const line of fieldLines) {
    const places = placeSeconds(problem.windows, line) / longest
    linear.addRow({ lower: places, upper: places }, inLine[line])
  }
  return beyond
}

/** Moves between goal and field of a player who stays on; an arc never leaves its period. */
function movesWithGoal(places: readonly number[]): number {
  return places.filter((place, index) => {
    const before = places[index - 1] ?? offField
    return place !== offField && before !== offField && place !== before
  }).length
}

function secondsAt({ windows }: LineUpProblem, window: number): Seconds {
  const own = windows[window]
  return own ? windowSeconds(own) : 0
}
