import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listPitchEvents } from '#data/pitch-events'
import type { PitchEvent } from '#pitch/pitch-event'

const onlyCoach = 'Only a coach of the squad can change the plan. What was planned stands.'

/**
 * Of new events those that are not a helper's to tap, each with a sentence: a new plan, and taking one back, which
 * changes the plan as well, or having one again that was taken back.
 */
export async function whyNotForHelper(
  tx: ClubTx,
  { sessionId, events }: { readonly sessionId: string; readonly events: readonly PitchEvent[] },
): Promise<readonly (readonly [id: string, why: string])[]> {
  const isUndone = events.some(({ deed }) => deed.kind === 'undo')
  const before = isUndone ? (await listPitchEvents(tx, { sessionId })).events : []
  const byId = new Map([...before, ...events].map((event) => [event.id, event]))
  return events.filter((event) => isOfPlan(event, byId)).map(({ id }) => [id, onlyCoach] as const)
}

/** A new plan, or an undo at whose end there is one. */
function isOfPlan(event: PitchEvent, byId: ReadonlyMap<string, PitchEvent>): boolean {
  const seen = new Set<string>()
  let at: PitchEvent | undefined = event
  while (at?.deed.kind === 'undo' && !seen.has(at.id)) {
    seen.add(at.id)
    at = byId.get(at.deed.undoes)
  }
  return at?.deed.kind === 'replan'
}
