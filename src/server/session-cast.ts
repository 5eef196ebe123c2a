import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { isId, newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { listPlayers, listSquadPlayers } from '#data/players'
import type { PlayerId } from '#squad/player'
import type { SquadId } from '#squad/squad'

type Guest = { readonly id: PlayerId; readonly name: string }

/** Everyone named in what was typed, new guests under the ids they will be recorded with. */
export type Cast = {
  readonly idOf: (typedId: string) => PlayerId
  readonly nameOf: (playerId: PlayerId) => string
  /** Who came along for the first time. */
  readonly guests: readonly Guest[]
}

/** Knows everybody in what was typed; refuses whoever is neither a guest named in it nor a player of the club. */
export async function castOf(
  tx: ClubTx,
  squadId: SquadId,
  typed: { readonly guests: readonly Guest[]; readonly playerIds: readonly string[] },
): Promise<Result<Cast, Problem>> {
  const guests = new Map(typed.guests.map(({ id, name }) => [id, { id: newId(), name }]))
  const names = new Map((await listSquadPlayers(tx, squadId)).map(({ id, name }) => [id, name]))
  const others = typed.playerIds.filter((id) => !guests.has(id) && !names.has(id))
  // A player of another squad of the club may come along.
  for (const { id, name } of await listPlayers(tx, others.filter(isId))) names.set(id, name)
  if (others.some((id) => !names.has(id))) {
    const message =
      'Somebody in this grid is no longer known in the club. Reload the page: what you typed is kept.'
    return refuse({ path: '', message })
  }
  for (const { id, name } of guests.values()) names.set(id, name)
  return accept({
    idOf: (typedId) => guests.get(typedId)?.id ?? typedId,
    nameOf: (playerId) => names.get(playerId) ?? 'Somebody',
    guests: [...guests.values()],
  })
}

/** Rows of players under the ids of the book. */
export function underBookIds<Row extends { readonly playerId: PlayerId }>(
  rows: readonly Row[],
  { idOf }: Cast,
): readonly Row[] {
  return rows.map((row) => ({ ...row, playerId: idOf(row.playerId) }))
}
