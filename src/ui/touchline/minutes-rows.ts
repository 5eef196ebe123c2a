import type { PlayerId } from '#squad/player'
import type { MatchState } from '#touchline/match-state'
import type { WatchedPromise } from '#touchline/promise-watch'
import { sayPromise } from '#touchline/say-promise'
import type { MinutesRow } from '#ui/touchline/minutes-screen'

/** What everyone who was there has had, and what is said of its promise. */
export function minutesRows(
  state: MatchState,
  watch: readonly WatchedPromise[],
  nameOf: (id: PlayerId) => string,
): readonly MinutesRow[] {
  const promises = new Map(watch.map((promise) => [promise.playerId, promise]))
  return state.players
    .filter(({ segments }) => segments.length > 0)
    .map(({ id, seconds, secondsIn, started }) => {
      const promise = promises.get(id)
      const told = promise ? sayPromise(promise, { name: nameOf(id), format: state.format }) : ''
      return {
        playerId: id,
        name: nameOf(id),
        playSeconds: seconds,
        keepSeconds: secondsIn.keeper,
        isStarter: started,
        atEnd: promise && state.status !== 'ended' ? promise.willHave : null,
        promise: told === '' ? null : told,
      }
    })
}
