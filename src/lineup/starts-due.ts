import { matchSpans } from '#exposure/match-spans'
import { fairKeepShare, fairSeatShare } from '#fairness/fair-share'
import type { Match } from '#match/match'
import type { PlayerId } from '#squad/player'

/** A match as far as its first kick-off is asked about. */
type Started = Pick<Match, 'periods' | 'register' | 'spells'>

/**
 * Starts that players are still due of matches that were played: their fair part of each first kick-off for which they
 * were there, less those at which they were on. Negative: they started more often. A start is shared as playing time is.
 */
export function startsDue(
  matches: readonly Started[],
  mayKeep: (player: PlayerId) => boolean,
): ReadonlyMap<PlayerId, number> {
  const due = new Map<PlayerId, number>()
  for (const match of matches) {
    const [first] = matchSpans(match)
    if (!first) continue
    const on = new Map(
      first.seats.flatMap(({ column, playerIds }) => playerIds.map((id) => [id, column.role])),
    )
    const keepers = [...on.values()].filter((role) => role === 'keep').length
    const able = (id: PlayerId) => mayKeep(id) || on.get(id) === 'keep'
    const places = {
      present: first.present.length,
      keeperSeats: keepers,
      able: first.present.filter(able).length,
    }
    for (const id of first.present) {
      const isAble = able(id)
      const fair = fairKeepShare(places, isAble) + fairSeatShare(places, { seats: on.size - keepers, isAble })
      due.set(id, (due.get(id) ?? 0) + fair - (on.has(id) ? 1 : 0))
    }
  }
  return due
}
