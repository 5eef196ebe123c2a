import type { Interval } from '#common/time'
import type { PlayerId } from '#squad/player'

/** From when to when a player could be given a turn, in seconds from the start of the session. */
export type PresenceLine = Interval & { readonly playerId: PlayerId }
