import type { Seconds } from '#common/time'
import type { MatchPlanPlayer, MatchPlanRequest } from '#lineup/match-plan'
import { placeSeconds } from '#lineup/place-seconds'
import { placesFor } from '#lineup/places-for'
import {
  type FixedPlace,
  type LineUpPlayer,
  type LineUpProblem,
  type LineUpWindow,
  notRunning,
} from '#lineup/problem'
import { secondsThere } from '#lineup/seconds-there'
import { windowsOfPeriods } from '#lineup/windows-of-periods'
import { leastSecondsOf } from '#match/format/least-seconds'
import { leastWherePossible } from '#match/format/least-where-possible'
import { placesInAll } from '#match/format/places-in-all'

/**
 * A plan that is asked for, as the problem that is solved: windows between the marks, pairs and locks as places in lists.
 * Where some come late or leave early and fewer are there than places, that many play; where there are never enough, the
 * places stay, and that is a clash.
 */
export function problemOfMatch(request: MatchPlanRequest): LineUpProblem {
  const windows = windowsWithEnough(request)
  const placeOf = new Map(request.players.map(({ playerId }, index) => [playerId, index]))
  const pairsOf = (pairs: MatchPlanRequest['apart']) =>
    pairs.flatMap(([one, other]): [number, number][] => {
      const [first, second] = [placeOf.get(one), placeOf.get(other)]
      return first === undefined || second === undefined ? [] : [[first, second]]
    })
  return {
    windows,
    players: withPossiblePromises(
      request,
      windows,
      request.players.map((player) => playerOf(request, player, windows)),
    ),
    rules: request.format.changesAtBreaksOnly ? { ...request.rules, mostChanges: 0 } : request.rules,
    apart: pairsOf(request.apart),
    together: pairsOf(request.together),
    fixed: request.locks.flatMap(({ playerId, start, end, place }) => {
      const player = placeOf.get(playerId)
      return windows.flatMap((window, index): FixedPlace[] =>
        player !== undefined && start < window.end && window.start < end
          ? [{ player, window: index, place }]
          : [],
      )
    }),
    hasStart: true,
  }
}

/** The periods of a match end to end, in playing time. */
export function periodStarts(periodSeconds: readonly Seconds[]): readonly Seconds[] {
  const starts: Seconds[] = []
  let at = 0
  for (const seconds of periodSeconds) {
    starts.push(at)
    at += seconds
  }
  return starts
}

/** The windows between kick-offs, marks and the ends of the periods, in playing time. */
export function windowsOfMatch(
  request: Pick<MatchPlanRequest, 'format' | 'marks' | 'places'>,
): readonly LineUpWindow[] {
  const { format, marks, places } = request
  const inside = format.changesAtBreaksOnly ? [] : marks
  return windowsOfPeriods(format.periodSeconds, inside).map((window) => ({ ...window, places }))
}

function windowsWithEnough(request: MatchPlanRequest): readonly LineUpWindow[] {
  const windows = windowsOfMatch(request)
  if (request.players.length < placesInAll(request.places)) return windows
  return windows.map((window) => {
    const there = request.players.filter((player) => isThereFor(player, window)).length
    return { ...window, places: placesFor(window.places, there) }
  })
}

function isThereFor({ from, to }: MatchPlanPlayer, { start, end }: LineUpWindow): boolean {
  return from <= start && (to === null || end <= to)
}

/** What a format promises only where the numbers allow it, cut down to what all can have. */
function withPossiblePromises(
  { format }: MatchPlanRequest,
  windows: readonly LineUpWindow[],
  players: readonly LineUpPlayer[],
): readonly LineUpPlayer[] {
  if (!format.leastTime.wherePossible) return players
  const least = leastWherePossible(
    players.map(({ leastSeconds }) => leastSeconds),
    {
      capacity: placeSeconds(windows),
      periodSeconds: format.leastTime.periods === null ? null : Math.max(1, ...format.periodSeconds),
    },
  )
  return players.map((player, index) => ({ ...player, leastSeconds: least[index] ?? 0 }))
}

function playerOf(
  request: MatchPlanRequest,
  player: MatchPlanPlayer,
  windows: readonly LineUpWindow[],
): LineUpPlayer {
  const { format, leastShare } = request
  const whole = windows.at(-1)?.end ?? 0
  const to = player.to ?? whole
  const isThere = windows.map((window) => isThereFor(player, window))
  const there = secondsThere({ isThere }, windows)
  const least = leastSecondsOf(
    { ...format.leastTime, share: leastShare },
    { periodSeconds: format.periodSeconds, from: player.from, to, policyShare: null },
  )
  const most = format.mostSecondsADay
  const mostSeconds = most === null ? null : Math.max(0, most - player.playedToday)
  // Late in a long day the day's limit wins over what each match promises.
  const room = player.playedToday > 0 ? (mostSeconds ?? there) : there
  return {
    id: player.playerId,
    keeps: player.keeps,
    isThere,
    owed: player.owed,
    leastSeconds: Math.min(least, there, room),
    mostSeconds,
    wishes: player.wishes,
    metSeconds: player.metSeconds,
    running: notRunning,
  }
}
