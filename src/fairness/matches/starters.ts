import type { Match } from '#match/match'
import type { PlayerId } from '#squad/player'

/** Who started a match: on at its first kick-off. */
export function startersOf(match: Pick<Match, 'periods' | 'spells'>): ReadonlySet<PlayerId> {
  const kickOff = match.periods[0]?.start
  return new Set(match.spells.filter(({ start }) => start === kickOff).map(({ playerId }) => playerId))
}
