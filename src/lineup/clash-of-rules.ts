import { isSamePair } from '#common/is-same-pair'
import type { LineUpClash } from '#lineup/line-up-clash'
import { isPeriodRunning } from '#lineup/period-running'
import { placeSeconds } from '#lineup/place-seconds'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'
import { secondsThere } from '#lineup/seconds-there'
import { placesInAll } from '#match/format/places-in-all'

/** Rules and promises that contradict each other, or the windows, whoever plays where. */
export function clashOfRules(problem: LineUpProblem): readonly LineUpClash[] {
  return [
    ...clashOfSpells(problem),
    ...clashOfKeeperPeriods(problem),
    ...clashOfTime(problem),
    ...problem.apart.flatMap((pair, apart): LineUpClash[] => {
      const together = problem.together.findIndex((other) => isSamePair(pair, other))
      return together < 0 ? [] : [{ kind: 'apartTogether', apart, together }]
    }),
  ]
}

function clashOfSpells(problem: LineUpProblem): readonly LineUpClash[] {
  const { longestSpellSeconds, longestOffSeconds, leastSpellSeconds } = problem.rules
  const tooLong = (
    kind: 'longestSpell' | 'longestOff',
    longest: number | null,
    holds: (window: number) => boolean,
  ): readonly LineUpClash[] => {
    const window = problem.windows.findIndex(
      (own, index) => longest !== null && windowSeconds(own) > longest && holds(index),
    )
    return window < 0 || longest === null ? [] : [{ kind, longest, first: window, last: window }]
  }
  const hasField = (window: number) => {
    const places = problem.windows[window]?.places
    return Boolean(places && placesInAll(places) > places.keeper)
  }
  const hasOff = (window: number) => {
    const places = problem.windows[window]?.places
    return Boolean(
      places && problem.players.filter(({ isThere }) => isThere[window]).length > placesInAll(places),
    )
  }
  const found = [
    ...tooLong('longestSpell', longestSpellSeconds, hasField),
    ...tooLong('longestOff', longestOffSeconds, hasOff),
  ]
  // Who begins a period out of goal must come off within it, and may not.
  const isShort = longestSpellSeconds !== null && leastSpellSeconds > longestSpellSeconds
  const isBound = problem.windows.some((window, index) => {
    const stays = problem.players.every(({ isThere }) =>
      problem.windows.every((other, at) => other.period !== window.period || isThere[at] === isThere[index]),
    )
    const length = problem.windows
      .filter(({ period }) => period === window.period)
      .reduce((sum, own) => sum + windowSeconds(own), 0)
    const isWhole = index > 0 || !isPeriodRunning(problem)
    return isWhole && stays && hasField(index) && length > (longestSpellSeconds ?? length)
  })
  return isShort && isBound && found.length === 0
    ? [{ kind: 'spells', least: leastSpellSeconds, longest: longestSpellSeconds }]
    : found
}

/** Each period takes somebody who may keep goal in it; there are only so many periods for each. */
function clashOfKeeperPeriods(problem: LineUpProblem): readonly LineUpClash[] {
  const most = problem.rules.mostKeeperPeriods
  if (most === null) return []
  const skip = isPeriodRunning(problem) ? problem.windows[0]?.period : undefined
  const asked = new Map<number, number>()
  for (const { period, places } of problem.windows)
    if (period !== skip) asked.set(period, Math.max(asked.get(period) ?? 0, places.keeper))
  const all = [...asked.values()].reduce((sum, count) => sum + count, 0)
  const able = problem.players.filter(({ keeps, isThere }) => keeps && isThere.some(Boolean))
  const room = able.reduce((sum, { running }) => sum + Math.max(0, most - running.periodsKept), 0)
  return all > room ? [{ kind: 'keeperPeriods', asked: all, able: able.length, most }] : []
}

function clashOfTime(problem: LineUpProblem): readonly LineUpClash[] {
  const there = problem.players.map((player) => secondsThere(player, problem.windows))
  const alone = problem.players.flatMap(({ leastSeconds, mostSeconds }, player): LineUpClash[] => {
    const present = there[player] ?? 0
    if (mostSeconds !== null && leastSeconds > mostSeconds)
      return [{ kind: 'leastAboveMost', player, least: leastSeconds, most: mostSeconds }]
    return leastSeconds > present
      ? [{ kind: 'leastAboveThere', player, least: leastSeconds, there: present }]
      : []
  })
  const asked = placeSeconds(problem.windows)
  const total = there.reduce((sum, seconds) => sum + seconds, 0)
  const allowed = problem.players.reduce(
    (sum, { mostSeconds }, player) =>
      sum + Math.min(there[player] ?? 0, mostSeconds ?? Number.POSITIVE_INFINITY),
    0,
  )
  return allowed < asked && total >= asked ? [...alone, { kind: 'mostSeconds', asked, allowed }] : alone
}
