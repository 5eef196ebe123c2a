import type { Seconds } from '#common/time'
import { leastSecondsOf } from '#match/format/least-seconds'
import { leastWherePossible } from '#match/format/least-where-possible'
import type { PlayerId } from '#squad/player'
import { bookStartOf } from '#touchline/match-clock'
import type { MatchPack } from '#touchline/match-pack'
import type { MatchPlayer, MatchState } from '#touchline/match-state'
import { periodFrame } from '#touchline/period-frame'

/** What one player is promised of a match, as it stands now; seconds of playing time. */
export type MatchPromise = {
  readonly playerId: PlayerId
  readonly least: Seconds
  /** From which second of playing time it is, or will be, there. */
  readonly from: Seconds
  /** For which it was there, and will be if it stays as it is. */
  readonly there: Seconds
  /** Of those, still to come. */
  readonly left: Seconds
}

/** Playing time of each period: as it was, or as it is planned to be. */
export function periodLengths({ periods, format, second }: MatchState): readonly Seconds[] {
  const played = new Map(periods.map((own) => [own.period, own]))
  const count = Math.max(format.periodSeconds.length, ...periods.map(({ period }) => period + 1))
  return Array.from({ length: count }, (_, period) => {
    const own = played.get(period)
    const isPassed = !own && periods.some((one) => one.period > period)
    if (isPassed) return 0
    if (!own) return periodFrame(format, period).seconds
    return own.length ?? (own.isExtra ? second - own.start : Math.max(own.planned, second - own.start))
  })
}

/** How long the match will have been, if it ends as planned. */
export function wholeSeconds(state: MatchState): Seconds {
  if (state.status === 'ended') return state.second
  return periodLengths(state).reduce((sum, seconds) => sum + seconds, 0)
}

/**
 * What everybody who was there, or is planned to come, is promised. By real presence: who came late or went off hurt is
 * promised a part of the time for which it was there.
 */
export function matchPromises(state: MatchState, pack: Pick<MatchPack, 'policy'>): readonly MatchPromise[] {
  const { plan, format } = state
  const periodSeconds = periodLengths(state)
  const whole = wholeSeconds(state)
  const share = plan ? plan.leastShare : null
  const policyShare = share ?? pack.policy.leastMatchShare
  const promises = state.players.flatMap((player): MatchPromise[] => {
    const { expectedFrom } = player
    const from =
      firstSecond(state, player) ?? (expectedFrom === null ? null : playingOfPlan(state, expectedFrom))
    if (from === null) return []
    const left = player.state === 'here' ? whole - state.second : expectedFrom === null ? 0 : whole - from
    const there = player.secondsThere + Math.max(0, left)
    // Who was away in between, or left, was not there throughout: only the part counts.
    const least = leastSecondsOf(
      { ...format.leastTime, share: share ?? format.leastTime.share },
      { periodSeconds, from, to: from + there, policyShare },
    )
    return [{ playerId: player.id, least: Math.min(least, there), from, there, left: Math.max(0, left) }]
  })
  if (!format.leastTime.wherePossible) return promises
  const played = state.players.reduce((sum, { seconds }) => sum + seconds, 0)
  const least = leastWherePossible(
    promises.map((one) => one.least),
    {
      capacity: played + Math.max(0, whole - state.second) * format.aSide,
      periodSeconds: format.leastTime.periods === null ? null : Math.max(1, ...format.periodSeconds),
    },
  )
  return promises.map((one, index) => ({ ...one, least: least[index] ?? one.least }))
}

/** Playing time as it will be when the plan's second comes, if all goes on as planned. */
function playingOfPlan(state: MatchState, planSecond: Seconds): Seconds {
  const lengths = periodLengths(state)
  let start = 0
  for (const [period, length] of lengths.entries()) {
    const frame = periodFrame(state.format, period)
    if (planSecond < frame.start + frame.seconds || period === lengths.length - 1)
      return start + Math.min(Math.max(0, planSecond - frame.start), length)
    start += length
  }
  return start
}

/** Playing time at which it was first there; null: it never was. */
function firstSecond(state: MatchState, { segments }: MatchPlayer): Seconds | null {
  const first = segments.find(({ state: how }) => how === 'here')
  if (!first) return null
  let reached = 0
  for (const period of state.periods) {
    const start = bookStartOf(state, period)
    if (first.from <= start) return period.start
    const inside = first.from - start
    const length = period.length ?? state.second - period.start
    if (inside < length) return period.start + inside
    reached = period.start + length
  }
  return state.periods.length === 0 ? 0 : reached
}
