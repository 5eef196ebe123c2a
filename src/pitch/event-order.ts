import type { PitchEvent } from '#pitch/pitch-event'

/**
 * The events of one session, each once, by their time and then their id. Whatever order and however often they
 * arrived, the same set comes out the same.
 */
export function inOrder<Done>(events: readonly PitchEvent<Done>[]): readonly PitchEvent<Done>[] {
  const byId = new Map<string, PitchEvent<Done>>()
  for (const event of events) {
    const known = byId.get(event.id)
    if (!known || isBefore(event, known)) byId.set(event.id, event)
  }
  return [...byId.values()].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
}

/** One id is one event; should two differ nevertheless, which of them stands must not hang on which came first. */
function isBefore<Done>(one: PitchEvent<Done>, other: PitchEvent<Done>): boolean {
  if (one.at !== other.at) return one.at < other.at
  return one.deviceId === other.deviceId
    ? JSON.stringify(one.deed) < JSON.stringify(other.deed)
    : one.deviceId < other.deviceId
}
