import type { Day } from '#common/time'
import type { PlayerId } from '#squad/player'

/** Days on which a player is known to be away, both belonging to it. Why is nobody's business here. */
export type PlayerAway = {
  readonly id: string
  readonly playerId: PlayerId
  readonly firstDay: Day
  readonly lastDay: Day
}
