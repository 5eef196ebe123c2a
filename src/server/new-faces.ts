import 'server-only'
import type { Day } from '#common/time'
import { listTakenIds, recordGuests } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { listPitchGuestIds } from '#data/pitch-events'
import type { PlayerId } from '#squad/player'
import type { TappedEvent } from '#touchline/tapped-event'

/** How new faces in what was tapped meet the players there are. */
export type NewFaces = {
  /** Ids that stand for a player already. */
  readonly taken: ReadonlySet<PlayerId>
  /** Events that cannot be taken, each with a sentence. */
  readonly refused: ReadonlyMap<string, string>
}

const isPlayer = 'This is a player of the club already, and no new face.'

export async function meetFaces(
  tx: ClubTx,
  { sessionId, events }: { readonly sessionId: string; readonly events: readonly TappedEvent[] },
): Promise<NewFaces> {
  const faces = facesOf(events)
  if (faces.length === 0) return { taken: new Set(), refused: new Map() }
  const taken = await listTakenIds(
    tx,
    faces.map(({ playerId }) => playerId),
  )
  // A guest of another practice is nobody's new face here: its name is not for this phone.
  const own = taken.size > 0 ? await listPitchGuestIds(tx, sessionId) : new Set()
  const strangers = faces.filter(({ playerId }) => taken.has(playerId) && !own.has(playerId))
  return { taken, refused: new Map(strangers.map(({ eventId }) => [eventId, isPlayer])) }
}

/**
 * Enters the new faces among these events as guests, at once and not when the practice goes into the book: what was
 * tapped can never be changed, and a name that must go some day must not stand in it.
 */
export async function recordFaces(
  tx: ClubTx,
  {
    faces,
    events,
    since,
  }: { readonly faces: NewFaces; readonly events: readonly TappedEvent[]; readonly since: Day },
): Promise<void> {
  const guests = new Map(
    facesOf(events)
      .filter(({ playerId }) => !faces.taken.has(playerId))
      .map(({ playerId, name }) => [playerId, { id: playerId, name }]),
  )
  await recordGuests(tx, { guests: [...guests.values()], since })
}

function facesOf(events: readonly TappedEvent[]) {
  return events.flatMap(({ id, deed }) =>
    deed.kind === 'guest' ? [{ eventId: id, playerId: deed.playerId, name: deed.name }] : [],
  )
}
