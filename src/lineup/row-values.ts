import { type LineUpBoard, offPlace } from '#lineup/line-up-board'
import { movePrice } from '#lineup/line-up-values'
import { lines } from '#match/match'

/** What one player's row comes to: how far it breaks rules, then goal by goal, then what only tidies up, then its comings on. */
export const rowFields = {
  broken: 0,
  promise: 1,
  minutes: 2,
  goal: 3,
  starts: 4,
  lines: 5,
  changes: 6,
  /** What only tidies up. */
  tidy: 7,
  comings: 8,
} as const
export const rowLength = 9

/** Beyond a rule by so many seconds counts as much again as breaking it. */
const brokenSeconds = 600

/** A reader of rows: writes what a player's places come to, every rule that looks at one player alone included. */
export function rowReader(board: LineUpBoard): (player: number, into: Float64Array) => void {
  const { problem, windowCount, seconds, period, isRunning, places, room, fair } = board
  const { rules, hasStart } = problem
  const least = rules.leastSpellSeconds
  const longestSpell = rules.longestSpellSeconds ?? Number.POSITIVE_INFINITY
  const longestOff = rules.longestOffSeconds ?? Number.POSITIVE_INFINITY
  const mostKeeper = rules.mostKeeperPeriods ?? Number.POSITIVE_INFINITY
  const hasGoal = Uint8Array.from(problem.windows, (window) => (window.places.keeper > 0 ? 1 : 0))
  const onLine = new Float64Array(offPlace)
  const isThere = problem.players.map((own) => Uint8Array.from(own.isThere, (there) => (there ? 1 : 0)))

  return (player, into) => {
    const own = problem.players[player]
    const there = isThere[player]
    if (!own || !there) return
    const row = player * windowCount
    const { running } = own
    const runningPlace = running.line === null ? offPlace : lines.indexOf(running.line)
    const isKeepingOn = isRunning && runningPlace === 0
    let broken = 0
    let changes = 0
    let moves = 0
    let comings = 0
    let keeperPeriods = running.periodsKept + (isKeepingOn ? 1 : 0)
    let lastKept = isKeepingOn ? (period[0] ?? -1) : -1
    let wasOn = runningPlace !== offPlace
    let hasComeOff = running.hasComeOff
    let before = isRunning ? runningPlace : -1
    let on = isRunning && before !== offPlace ? running.seconds : 0
    let onField = isRunning && before !== offPlace && before !== 0 ? running.seconds : 0
    let off = isRunning && before === offPlace ? running.seconds : 0
    onLine.fill(0)
    for (let window = 0; window < windowCount; window += 1) {
      const length = seconds[window] as number
      const place = places[row + window] as number
      if (window > 0 && period[window] !== period[window - 1]) {
        before = -1
        on = 0
        onField = 0
        off = 0
      }
      if (before === 0 && place !== 0 && rules.keeperForPeriod && there[window] && hasGoal[window])
        broken += 1
      if (place === offPlace) {
        if (before >= 0 && before !== offPlace && there[window] && on < least)
          broken += 1 + (least - on) / brokenSeconds
        on = 0
        onField = 0
        off = there[window] ? off + length : 0
        if (off > longestOff) broken += length / brokenSeconds
        if (wasOn) hasComeOff = true
        wasOn = false
      } else {
        onLine[place] = (onLine[place] as number) + length
        if (before === offPlace) changes += 1
        else if (before >= 0 && before !== place) moves += 1
        on += length
        onField = place === 0 ? 0 : onField + length
        off = 0
        if (onField > longestSpell) broken += length / brokenSeconds
        if (!wasOn && !(window === 0 && hasStart)) comings += 1
        if (hasComeOff && !rules.mayReturn) broken += 1
        wasOn = true
        if (place === 0 && period[window] !== lastKept) {
          lastKept = period[window] as number
          keeperPeriods += 1
          if (keeperPeriods > mostKeeper) broken += 1
        }
      }
      before = place
    }
    const goal = onLine[0] as number
    const back = onLine[1] as number
    const middle = onLine[2] as number
    const forward = onLine[3] as number
    const played = goal + back + middle + forward
    if (own.mostSeconds !== null && played > own.mostSeconds)
      broken += 1 + (played - own.mostSeconds) / brokenSeconds
    const uneven = own.owed.playSeconds + (fair.play[player] as number) - played
    const unevenGoal = own.keeps ? own.owed.keepSeconds + (fair.keep[player] as number) - goal : 0
    const started = places[row] === offPlace ? 0 : 1
    const unevenStart = hasStart ? own.owed.starts + (fair.starts[player] as number) - started : 0
    into[rowFields.broken] = broken
    into[rowFields.promise] = Math.max(0, own.leastSeconds - played)
    into[rowFields.minutes] = uneven * uneven
    into[rowFields.goal] = unevenGoal * unevenGoal
    into[rowFields.starts] = unevenStart * unevenStart
    into[rowFields.lines] =
      moves * movePrice +
      Math.max(0, back - (room[player * 3] as number)) +
      Math.max(0, middle - (room[player * 3 + 1] as number)) +
      Math.max(0, forward - (room[player * 3 + 2] as number))
    into[rowFields.changes] = changes
    into[rowFields.tidy] = 0
    into[rowFields.comings] = comings
  }
}
