import 'server-only'
import type { Viewer } from '#access/viewer'
import { findAdult } from '#data/adults'
import { findClub } from '#data/clubs'
import { listChildrenOf } from '#data/guardianships'
import { inClub } from '#data/in-club'
import { listSquadIdsOfCoach } from '#data/squad-coaches'
import { todayOf } from '#server/today'

/** The viewer a person is now: role, squads and children as they stand today. Null when the person is not in the club, or no longer has access. */
export async function findViewer(at: { clubId: string; personId: string }): Promise<Viewer | null> {
  return inClub(at.clubId, async (tx) => {
    const club = await findClub(tx)
    const person = await findAdult(tx, at.personId)
    if (!club || !person || person.accessEndedAt) return null
    const day = todayOf(club, new Date())
    const children = await listChildrenOf(tx, person.id)
    return {
      clubId: club.id,
      personId: person.id,
      name: person.name,
      role: person.role,
      squadIds: await listSquadIdsOfCoach(tx, { personId: person.id, day, helps: person.role === 'helper' }),
      playerIds: children.map((child) => child.id),
    }
  })
}
