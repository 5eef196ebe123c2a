import type { EpochMs } from '#pitch/pitch-event'
import { asPlannedTaps } from '#touchline/as-planned-taps'
import { assumedEvent } from '#touchline/assumed-event'
import type { MatchToFold } from '#touchline/fold-match'
import type { MatchEvent } from '#touchline/match-pack'

/** A match with these events, and all the rest of it as planned. */
export function withAsPlanned(
  pack: MatchToFold,
  events: readonly MatchEvent[],
  beginsAt: EpochMs,
): readonly MatchEvent[] {
  return [...events, ...(asPlannedTaps(pack, events, beginsAt) ?? []).map(assumedEvent)]
}
