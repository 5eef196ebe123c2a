import 'server-only'
import type { Viewer } from '#access/viewer'
import { listGuests } from '#data/guests'
import type { ClubTx } from '#data/in-club'
import { namesApart } from '#fairness/book/names-apart'
import { listJoinable } from '#server/join-guest'
import type { Player, PlayerId } from '#squad/player'

type Named = { readonly id: PlayerId; readonly name: string }
type ShownGuest = Named & { readonly joinedToId: PlayerId | null }

/** Who of these is a guest, and whom they may turn out to be. */
export async function loadGuestsOf(
  tx: ClubTx,
  viewer: Viewer,
  { ids, people }: { readonly ids: readonly PlayerId[]; readonly people: readonly Player[] },
): Promise<{ readonly guests: readonly ShownGuest[]; readonly joinable: readonly Named[] }> {
  const names = new Map(people.map(({ id, name }) => [id, name]))
  const guests = (await listGuests(tx, [...new Set(ids)])).map(({ id, name, joinedToId }) => ({
    id,
    name: names.get(id) ?? name,
    joinedToId,
  }))
  const isAsked = guests.some(({ joinedToId }) => joinedToId === null)
  const joinable = isAsked ? namesApart(await listJoinable(tx, viewer)) : []
  return { guests, joinable: joinable.map(({ id, name }) => ({ id, name })) }
}
