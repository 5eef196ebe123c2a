import type { EpochMs } from '#pitch/pitch-event'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'

/** A deed that nobody tapped, to be folded with those that were: never sent or kept. `index`: its place among such. */
export function assumedEvent(
  { at, deed }: { readonly at: EpochMs; readonly deed: MatchDeed },
  index: number,
): MatchEvent {
  return {
    id: `ffffffff-ffff-7fff-bfff-${String(index).padStart(12, '0')}`,
    deviceId: '00000000-0000-0000-0000-000000000000',
    at,
    deed,
  }
}
