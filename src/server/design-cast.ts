import 'server-only'
import type { Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import type { Cast } from '#practice/cast-faults'
import { isMemberBetween } from '#squad/member-between'
import type { Squad } from '#squad/squad'

/** Whom a squad has today for a design. */
export async function loadCast(
  tx: ClubTx,
  { squad, today }: { readonly squad: Squad; readonly today: Day },
): Promise<Cast> {
  const memberships = await listMemberships(tx, squad.id)
  const members = (await listSquadPlayers(tx, squad.id)).filter(({ id }) =>
    isMemberBetween(memberships, { playerId: id, firstDay: today, lastDay: today }),
  )
  return {
    squadName: squad.name,
    children: members.length,
    mayKeep: members.filter(({ keeps }) => keeps).length,
  }
}
