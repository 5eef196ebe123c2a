import type { Deed, PitchEvent } from '#pitch/pitch-event'
import type { MatchDeed } from '#touchline/match-deed'

/** What may be tapped: at a practice, or beside a match. One session has one kind only. */
export type TappedDeed = Deed | MatchDeed
export type TappedEvent = PitchEvent<TappedDeed>
