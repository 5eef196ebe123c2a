import type { Seconds } from '#common/time'
import type { LeastTime } from '#match/format/match-format'

/** A match to be shared out: places on the pitch at once, and its periods. */
export type MatchToShare = { readonly aSide: number; readonly periodSeconds: readonly Seconds[] }

/** What one of so many players would have if all had the same: a·T / s, and never more than the match. */
export function evenSeconds({ aSide, periodSeconds }: MatchToShare, players: number): Seconds {
  return players === 0 ? 0 : (Math.min(aSide, players) * sumOf(periodSeconds)) / players
}

/** Periods dealt out as evenly as can be: so many players have `periods`, the others one fewer, nobody more. */
export function evenPeriods(
  { aSide, periodSeconds }: MatchToShare,
  players: number,
): { readonly periods: number; readonly playersWithThem: number } {
  const count = periodSeconds.length
  if (players <= aSide) return { periods: count, playersWithThem: players }
  const places = aSide * count
  const left = places % players
  return left === 0
    ? { periods: places / players, playersWithThem: players }
    : { periods: Math.ceil(places / players), playersWithThem: left }
}

/**
 * The most players that can come if each, there throughout, is to have what is promised; null: nothing is promised. With
 * more, somebody must have less, whoever plans it: promises add up to more than there is.
 */
export function mostPlayersFor(
  promise: Pick<LeastTime, 'share' | 'periods'>,
  match: MatchToShare & { readonly policyShare: number | null },
): number | null {
  const { aSide, periodSeconds, policyShare } = match
  const share = promise.share ?? policyShare ?? 0
  const periods = promise.periods ?? 0
  const bounds = [
    // A hair more, so that a third of three is not lost to rounding.
    ...(share > 0 ? [Math.floor(aSide / share + 1e-9)] : []),
    ...(periods > 0 ? [Math.floor((aSide * periodSeconds.length) / periods)] : []),
  ]
  return bounds.length === 0 ? null : Math.max(aSide, Math.min(...bounds))
}

function sumOf(seconds: readonly Seconds[]): Seconds {
  return seconds.reduce((sum, one) => sum + one, 0)
}
