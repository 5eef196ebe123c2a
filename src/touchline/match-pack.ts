import type { MatchPlan } from '#lineup/match-plan'
import type { MatchFormat } from '#match/format/match-format'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PitchPack } from '#pitch/pitch-pack'
import type { MatchDeed } from '#touchline/match-deed'

export type MatchEvent = PitchEvent<MatchDeed>

/** Everything a phone needs beside one match without a signal: the answer to `GET /api/pitch/<sessionId>` for a match. */
export type MatchPack = Pick<
  PitchPack,
  'session' | 'planVersion' | 'players' | 'register' | 'viewer' | 'serverNow' | 'cursor'
> & {
  readonly kind: 'match'
  /** Null: nothing was planned, and places are tapped as they are. To a helper without pairs and what is owed. */
  readonly plan: MatchPlan | null
  /** How the squad's matches are played, for a match without a plan. */
  readonly format: MatchFormat
  readonly policy: { readonly leastMatchShare: number }
  /** The club counts goals of its matches. */
  readonly countsGoals: boolean
  readonly events: readonly MatchEvent[]
}
