import type { SharedDeed } from '#pitch/pitch-event'
import type { PlayerId } from '#squad/player'

/** One tap for many names: all of them are here. */
export function allHere(playerIds: readonly PlayerId[]): readonly SharedDeed[] {
  return playerIds.map((playerId) => ({ kind: 'register', playerId, state: 'here' }))
}
