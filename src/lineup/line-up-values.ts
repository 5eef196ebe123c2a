import type { Seconds } from '#common/time'
import { type FairLineUp, fairLineUp } from '#lineup/fair-line-up'
import type { LineUpPlan, LineUpValues } from '#lineup/line-up'
import { isPeriodRunning } from '#lineup/period-running'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { roomInLines } from '#lineup/room-in-lines'
import { fieldLines } from '#match/format/line-wish'
import type { Line } from '#match/match'

/** What a plan comes to, goal by goal, worked out from its places alone; less is better. */
export function lineUpValues(problem: LineUpProblem, plan: LineUpPlan): LineUpValues {
  const fair = fairLineUp(problem)
  return {
    promise: promiseMissed(problem, plan),
    minutes: minutesUneven(problem, plan, fair),
    goal: goalUneven(problem, plan, fair),
    starts: startsUneven(problem, plan, fair),
    lines: beyondRoomInLines(problem, plan, fair) + movePrice * movesInside(problem, plan),
    changes: changesInside(problem, plan),
  }
}

/** Seconds of a player on, or in one line. */
export function secondsOf(
  problem: LineUpProblem,
  places: readonly (Line | null)[] | undefined,
  line?: Line,
): number {
  return problem.windows.reduce((sum, window, index) => {
    const place = places?.[index] ?? null
    return place !== null && (line === undefined || place === line) ? sum + windowSeconds(window) : sum
  }, 0)
}

function promiseMissed(problem: LineUpProblem, plan: LineUpPlan): number {
  return problem.players.reduce(
    (sum, { leastSeconds }, player) => sum + Math.max(0, leastSeconds - secondsOf(problem, plan[player])),
    0,
  )
}

function minutesUneven(problem: LineUpProblem, plan: LineUpPlan, fair: FairLineUp): number {
  return problem.players.reduce((sum, { owed }, player) => {
    const left = owed.playSeconds + (fair.play[player] ?? 0) - secondsOf(problem, plan[player])
    return sum + left ** 2
  }, 0)
}

function goalUneven(problem: LineUpProblem, plan: LineUpPlan, fair: FairLineUp): number {
  return problem.players.reduce((sum, { owed, keeps }, player) => {
    if (!keeps) return sum
    const left = owed.keepSeconds + (fair.keep[player] ?? 0) - secondsOf(problem, plan[player], 'keeper')
    return sum + left ** 2
  }, 0)
}

function startsUneven(problem: LineUpProblem, plan: LineUpPlan, fair: FairLineUp): number {
  if (!problem.hasStart) return 0
  return problem.players.reduce((sum, { owed }, player) => {
    const started = plan[player]?.[0] ? 1 : 0
    return sum + (owed.starts + (fair.starts[player] ?? 0) - started) ** 2
  }, 0)
}

function beyondRoomInLines(problem: LineUpProblem, plan: LineUpPlan, fair: FairLineUp): number {
  const rooms = roomInLines(problem, fair)
  return problem.players.reduce(
    (sum, _, player) =>
      fieldLines.reduce(
        (beyond, line) =>
          beyond + Math.max(0, secondsOf(problem, plan[player], line) - (rooms[player]?.[line] ?? 0)),
        sum,
      ),
    0,
  )
}

/** What a move from line to line inside a period weighs among the lines, in seconds. Our own judgement, no source. */
export const movePrice: Seconds = 600

/** Moves of players who stay on, from one line or goal to another, inside periods. */
export function movesInside(problem: LineUpProblem, plan: LineUpPlan): number {
  const isRunning = isPeriodRunning(problem)
  return problem.players.reduce(
    (sum, { running }, player) =>
      sum +
      problem.windows.filter((window, index) => {
        const place = plan[player]?.[index] ?? null
        const before = problem.windows[index - 1]
        const stood = before ? (plan[player]?.[index - 1] ?? null) : isRunning ? running.line : null
        const isSamePeriod = !before || before.period === window.period
        return isSamePeriod && place !== null && stood !== null && stood !== place
      }).length,
    0,
  )
}

/** Players coming on inside periods, in all. */
export function changesInside(problem: LineUpProblem, plan: LineUpPlan): number {
  const isRunning = isPeriodRunning(problem)
  return problem.players.reduce(
    (sum, { running }, player) =>
      sum +
      problem.windows.filter((window, index) => {
        if (!plan[player]?.[index]) return false
        const before = problem.windows[index - 1]
        if (before) return before.period === window.period && !plan[player]?.[index - 1]
        // A period that is running already: who is off then and on now comes on.
        return isRunning && running.line === null
      }).length,
    0,
  )
}
