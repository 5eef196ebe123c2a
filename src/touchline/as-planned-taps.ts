import type { EpochMs } from '#pitch/pitch-event'
import { assumedEvent } from '#touchline/assumed-event'
import { foldMatch, type MatchToFold } from '#touchline/fold-match'
import { momentOfSecond } from '#touchline/match-clock'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'

/**
 * What is left of a match as if all went as planned from here on: kick-offs and whistles at their times, a break of the
 * format's length between. For a match of which nothing, or not all, was tapped. Each is to be stamped in this order;
 * `at` says when it would have been. Null: nothing was planned, and nothing says who was on.
 */
export function asPlannedTaps(
  pack: MatchToFold,
  events: readonly MatchEvent[],
  beginsAt: EpochMs,
): readonly { readonly at: EpochMs; readonly deed: MatchDeed }[] | null {
  const added: { at: EpochMs; deed: MatchDeed }[] = []
  const state = () => foldMatch(pack, [...events, ...added.map(assumedEvent)])
  const { periodSeconds, breakSeconds } = pack.plan?.format ?? pack.format
  const last = events.reduce((latest, { at }) => Math.max(latest, at + 1), beginsAt)
  for (let guard = 0; guard <= 2 * periodSeconds.length; guard += 1) {
    const { status, period, periods: played, nextKickOff } = state()
    if (status === 'ended') return added
    if (period) {
      const at = Math.max(last, momentOfSecond(period, period.planned))
      added.push({ at, deed: { kind: 'periodEnd', period: period.period } })
    } else if (!nextKickOff || nextKickOff.isExtra) {
      added.push({ at: (added.at(-1)?.at ?? last) + 1, deed: { kind: 'fullTime' } })
      return added
    } else {
      if (nextKickOff.on.length === 0) return null
      const before = played.at(-1)?.endedAt ?? null
      const at = before === null ? last : Math.max(last, before + breakSeconds * 1000)
      added.push({ at, deed: { kind: 'kickOff', period: nextKickOff.period, on: nextKickOff.on } })
    }
  }
  return added
}
