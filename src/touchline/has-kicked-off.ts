import { inOrder } from '#pitch/event-order'
import { eventsThatStand } from '#pitch/standing-events'
import type { MatchEvent } from '#touchline/match-pack'

/** Whether a kick-off was tapped and still counts. */
export function hasKickedOff(events: readonly MatchEvent[]): boolean {
  return eventsThatStand(inOrder(events)).standing.some(({ deed }) => deed.kind === 'kickOff')
}
