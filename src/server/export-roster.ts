import 'server-only'
import { shareADay } from '#common/dated'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import type { SquadDays } from '#data/sessions'
import { exportKeys } from '#exchange/export-keys'
import { writeRoster } from '#exchange/roster/write-roster'

/** Everyone who was a member on one of the days, a line for each membership, by name; erased children are on no roster. */
export async function exportRoster(tx: ClubTx, { squadId, from, to }: SquadDays): Promise<string> {
  const erased = await listErasedIds(tx)
  const players = (await listSquadPlayers(tx, squadId)).filter(({ id }) => !erased.has(id))
  const keys = exportKeys(players)
  const memberships = await listMemberships(tx, squadId)
  return writeRoster(
    players.flatMap(({ id, name, keeps, wantsToKeep }) =>
      memberships
        .filter((held) => held.playerId === id && shareADay(held, { firstDay: from, lastDay: to }))
        .map(({ firstDay, lastDay }) => ({
          name,
          code: keys.get(id) ?? id,
          keeps,
          wantsToKeep,
          firstDay,
          lastDay,
        })),
    ),
  )
}
