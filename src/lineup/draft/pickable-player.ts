import type { MatchPlanPlayer } from '#lineup/match-plan'
import type { Owed } from '#lineup/problem'
import type { PlayerId } from '#squad/player'

/** A player a match can be planned for, as the book has it on the day. */
export type PickablePlayer = Pick<MatchPlanPlayer, 'wishes' | 'metSeconds' | 'playedToday'> & {
  readonly id: PlayerId
  readonly name: string
  readonly keeps: boolean
  readonly isMember: boolean
  /** Of the season's matches so far. */
  readonly owed: Owed
}
