import { canFill } from '#lineup/clash-of-places'
import type { LineUpClash } from '#lineup/line-up-clash'
import { isPeriodRunning } from '#lineup/period-running'
import { type FixedPlace, type LineUpProblem, windowSeconds } from '#lineup/problem'
import { placesInAll } from '#match/format/places-in-all'
import { lines } from '#match/match'

/** Held places that cannot be: by themselves, with each other, with pairs kept apart, or too soon after one another. */
export function clashOfHeldPlaces(problem: LineUpProblem): readonly LineUpClash[] {
  const alone = problem.fixed.flatMap((fixed) => clashOfOne(problem, fixed))
  if (alone.length > 0) return alone
  const together = [...problem.windows.keys()].flatMap((window) => clashOfWindow(problem, window))
  return [...together, ...clashOfPairs(problem), ...clashOfOrder(problem)]
}

function clashOfOne(problem: LineUpProblem, fixed: FixedPlace): readonly LineUpClash[] {
  const { player, window, place } = fixed
  const own = problem.players[player]
  const held = (why: 'absent' | 'keeper' | 'notYet' | 'twice'): readonly LineUpClash[] => [
    { kind: 'held', player, window, why },
  ]
  const isTwice = problem.fixed.some(
    (other) => other.player === player && other.window === window && contradicts(other.place, place),
  )
  if (isTwice && problem.fixed.find((other) => other.player === player && other.window === window) === fixed)
    return held('twice')
  if (place === 'off' || !own) return []
  if (!own.isThere[window]) return held('absent')
  if (place === 'keeper') return own.keeps ? [] : held('keeper')
  return place !== 'on' && own.wishes[place] === 'notYet' ? held('notYet') : []
}

function contradicts(one: FixedPlace['place'], other: FixedPlace['place']): boolean {
  if (one === other) return false
  return one === 'off' || other === 'off' || (one !== 'on' && other !== 'on')
}

function clashOfWindow(problem: LineUpProblem, window: number): readonly LineUpClash[] {
  const places = problem.windows[window]?.places
  if (!places) return []
  const heldAs = (is: (place: FixedPlace['place']) => boolean) => [
    ...new Set(
      problem.fixed.flatMap((fixed) => (fixed.window === window && is(fixed.place) ? [fixed.player] : [])),
    ),
  ]
  const tooMany = (
    place: FixedPlace['place'],
    players: readonly number[],
    room: number,
  ): readonly LineUpClash[] =>
    players.length > room ? [{ kind: 'heldTooMany', window, place, players, room }] : []
  const there = problem.players.filter(({ isThere }) => isThere[window]).length
  const off = heldAs((place) => place === 'off').filter((player) => problem.players[player]?.isThere[window])
  const found = [
    ...lines.flatMap((line) =>
      tooMany(
        line,
        heldAs((place) => place === line),
        places[line],
      ),
    ),
    ...tooMany(
      'on',
      heldAs((place) => place !== 'off'),
      placesInAll(places),
    ),
    ...tooMany('off', off, Math.max(0, there - placesInAll(places))),
  ]
  if (found.length > 0) return found
  const isHeld = problem.fixed.some((fixed) => fixed.window === window)
  const isTheirFault = isHeld && canFill({ ...problem, fixed: [] }, window) && !canFill(problem, window)
  return isTheirFault ? [{ kind: 'lines', first: window, last: window }] : []
}

function isHeldOn(problem: LineUpProblem, player: number, window: number): boolean {
  return problem.fixed.some(
    (fixed) => fixed.player === player && fixed.window === window && fixed.place !== 'off',
  )
}

function clashOfPairs(problem: LineUpProblem): readonly LineUpClash[] {
  return problem.apart.flatMap(([one, other], pair): readonly LineUpClash[] => {
    const window = [...problem.windows.keys()].find(
      (at) => isHeldOn(problem, one, at) && isHeldOn(problem, other, at),
    )
    return window === undefined ? [] : [{ kind: 'apartHeld', pair, window }]
  })
}

/** Held on and then off before the least time on is over; held on after it came off where nobody comes back. */
function clashOfOrder(problem: LineUpProblem): readonly LineUpClash[] {
  const { leastSpellSeconds, mayReturn } = problem.rules
  const isHeldOff = (player: number, window: number) =>
    problem.fixed.some((fixed) => fixed.player === player && fixed.window === window && fixed.place === 'off')
  const isRunning = isPeriodRunning(problem)
  return problem.players.flatMap(({ isThere, running }, player) => {
    const found: LineUpClash[] = []
    let longestOn = isRunning && running.line !== null ? running.seconds : 0
    let hasComeOff = running.hasComeOff
    for (const [window, own] of problem.windows.entries()) {
      const before = problem.windows[window - 1]
      const startsPeriod = before ? before.period !== own.period : !isRunning
      const wasOn = before ? isHeldOn(problem, player, window - 1) : running.line !== null
      if (startsPeriod) longestOn = 0
      const isOff = isHeldOff(player, window) && Boolean(isThere[window])
      if (isOff && wasOn && !startsPeriod && longestOn < leastSpellSeconds)
        found.push({ kind: 'tooSoon', player, window, played: longestOn, least: leastSpellSeconds })
      if (!mayReturn && hasComeOff && isHeldOn(problem, player, window))
        found.push({ kind: 'held', player, window, why: 'comesBack' })
      if (isOff && wasOn) hasComeOff = true
      longestOn = isOff || !isThere[window] ? 0 : longestOn + windowSeconds(own)
    }
    return found
  })
}
