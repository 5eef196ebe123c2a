import type { Seconds } from '#common/time'
import { equalTimeChangesOf, greatestCommon } from '#lineup/equal-time-changes'
import { type FairLineUp, fairLineUp } from '#lineup/fair-line-up'
import { type LineUpGoal, type LineUpValues, lineUpGoals } from '#lineup/line-up'
import { mostEvenParts, type PartAsked } from '#lineup/most-even-parts'
import { placeSeconds } from '#lineup/place-seconds'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { roomInLines } from '#lineup/room-in-lines'
import { fieldLines } from '#match/format/line-wish'
import { placesInAll } from '#match/format/places-in-all'

/**
 * What no line-up can go below, goal by goal, by arithmetic alone; each given that the goals before it have the values
 * that are told. Often less than what can be reached: then only the exact search knows.
 */
export function lineUpBounds(problem: LineUpProblem, values: LineUpValues): LineUpValues {
  const fair = fairLineUp(problem)
  const ends = timeEnds(problem, values.promise === 0)
  const promise = promiseBound(problem)
  return {
    promise,
    minutes: minutesBound(problem, fair, ends),
    goal: goalBound(problem, fair),
    starts: startsBound(problem, fair),
    lines: linesBound(problem, fair, ends),
    changes: changesBound(problem, values),
  }
}

export const noBounds: LineUpValues = Object.fromEntries(lineUpGoals.map((goal) => [goal, 0])) as Record<
  LineUpGoal,
  number
>

type Ends = { readonly least: Seconds; readonly most: Seconds }

/** Least and most time of each player: held places, absence, limits, and what was promised where all promises are kept. */
function timeEnds(problem: LineUpProblem, areKept: boolean): readonly Ends[] {
  return problem.players.map(({ isThere, mostSeconds, leastSeconds }, player) => {
    const held = (isHeldOn: boolean) =>
      problem.windows.reduce((sum, window, index) => {
        const isHeld = problem.fixed.some(
          (fixed) =>
            fixed.player === player && fixed.window === index && (fixed.place !== 'off') === isHeldOn,
        )
        const is = isHeldOn ? isHeld : !isThere[index] || isHeld
        return is ? sum + windowSeconds(window) : sum
      }, 0)
    const whole = problem.windows.reduce((sum, window) => sum + windowSeconds(window), 0)
    return {
      least: Math.max(held(true), areKept ? leastSeconds : 0),
      most: Math.min(whole - held(false), mostSeconds ?? whole),
    }
  })
}

/** Promised in all, less than there is to share out; and what each is promised beyond its own limit. */
function promiseBound(problem: LineUpProblem): number {
  const ends = timeEnds(problem, false)
  const promised = problem.players.reduce((sum, { leastSeconds }) => sum + leastSeconds, 0)
  const beyond = problem.players.reduce(
    (sum, { leastSeconds }, player) => sum + Math.max(0, leastSeconds - (ends[player]?.most ?? 0)),
    0,
  )
  return Math.max(beyond, promised - placeSeconds(problem.windows), 0)
}

function minutesBound(problem: LineUpProblem, fair: FairLineUp, ends: readonly Ends[]): number {
  const asked = problem.players.map(
    ({ owed }, player): PartAsked => ({
      due: owed.playSeconds + (fair.play[player] ?? 0),
      least: ends[player]?.least ?? 0,
      most: ends[player]?.most ?? 0,
    }),
  )
  return (
    mostEvenParts(asked, { total: placeSeconds(problem.windows), unit: unitOf(problem) })?.unevenness ?? 0
  )
}

function goalBound(problem: LineUpProblem, fair: FairLineUp): number {
  const total = placeSeconds(problem.windows, 'keeper')
  const asked = problem.players.flatMap(({ keeps, owed, isThere }, player): PartAsked[] => {
    if (!keeps) return []
    const most = problem.windows.reduce(
      (sum, window, index) =>
        isThere[index] && window.places.keeper > 0 ? sum + windowSeconds(window) : sum,
      0,
    )
    return [{ due: owed.keepSeconds + (fair.keep[player] ?? 0), least: 0, most }]
  })
  const unit = staysForPeriods(problem) ? periodUnit(problem) : unitOf(problem)
  return mostEvenParts(asked, { total, unit })?.unevenness ?? 0
}

/** Whether time in goal comes in whole periods: a keeper stays, and nobody leaves or comes inside one. */
function staysForPeriods(problem: LineUpProblem): boolean {
  const isSteady = problem.windows.every((window, index) => {
    const before = problem.windows[index - 1]
    if (before?.period !== window.period) return true
    return (
      before.places.keeper === window.places.keeper &&
      problem.players.every(({ isThere }) => isThere[index] === isThere[index - 1])
    )
  })
  return problem.rules.keeperForPeriod && isSteady
}

function startsBound(problem: LineUpProblem, fair: FairLineUp): number {
  const [first] = problem.windows
  if (!first || !problem.hasStart) return 0
  const asked = problem.players.map(({ owed, isThere }, player): PartAsked => {
    const held = problem.fixed.find((fixed) => fixed.player === player && fixed.window === 0)?.place
    return {
      due: owed.starts + (fair.starts[player] ?? 0),
      least: held && held !== 'off' ? 1 : 0,
      most: isThere[0] && held !== 'off' ? 1 : 0,
    }
  })
  return mostEvenParts(asked, { total: placesInAll(first.places), unit: 1 })?.unevenness ?? 0
}

/** What of each line is more than all have room for. */
function linesBound(problem: LineUpProblem, fair: FairLineUp, ends: readonly Ends[]): number {
  const rooms = roomInLines(problem, fair)
  return fieldLines.reduce((sum, line) => {
    const places = placeSeconds(problem.windows, line)
    const room = problem.players.reduce(
      (seconds, { wishes }, player) =>
        wishes[line] === 'notYet'
          ? seconds
          : seconds + Math.min(rooms[player]?.[line] ?? 0, ends[player]?.most ?? 0),
      0,
    )
    return sum + Math.max(0, places - room)
  }, 0)
}

/** Exactly equal time has its price in changes; for anything else nothing is known here. */
function changesBound(problem: LineUpProblem, values: LineUpValues): number {
  return values.minutes < 1e-6 ? (equalTimeChangesOf(problem) ?? 0) : 0
}

/** Every time on is a whole number of these. */
function unitOf(problem: LineUpProblem): Seconds {
  return problem.windows.reduce((unit, window) => greatestCommon(unit, windowSeconds(window)), 0) || 1
}

function periodUnit(problem: LineUpProblem): Seconds {
  const lengths = new Map<number, Seconds>()
  for (const window of problem.windows)
    lengths.set(window.period, (lengths.get(window.period) ?? 0) + windowSeconds(window))
  return [...lengths.values()].reduce((unit, seconds) => greatestCommon(unit, seconds), 0) || 1
}
