import type { PitchEvent } from '#pitch/pitch-event'
import type { MatchDeed } from '#touchline/match-deed'

/** Whether a kick-off was tapped and still counts. */
export function hasKickedOff(events: readonly PitchEvent<MatchDeed>[]): boolean {
  const undosOf = new Map<string, string[]>()
  for (const { id, deed } of events)
    if (deed.kind === 'undo') undosOf.set(deed.undoes, [...(undosOf.get(deed.undoes) ?? []), id])
  // Undos that undo each other in a ring end at the first that is looked at twice.
  const counts = (id: string, seen: ReadonlySet<string>): boolean =>
    !(undosOf.get(id) ?? []).some((undo) => !seen.has(undo) && counts(undo, new Set([...seen, undo])))
  return events.some(({ id, deed }) => deed.kind === 'kickOff' && counts(id, new Set([id])))
}
