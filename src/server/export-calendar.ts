import 'server-only'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { listSessions, type SquadDays } from '#data/sessions'
import { writeCalendar } from '#exchange/calendar/write-calendar'
import { exportKeys } from '#exchange/export-keys'

/** The practices and matches, cancelled ones left out; how they ended where the club counts goals. */
export async function exportCalendar(tx: ClubTx, scope: SquadDays): Promise<string> {
  const sessions = await listSessions(tx, { ...scope, withCancelled: false })
  const keys = exportKeys(sessions)
  const { countsGoals } = await getClub(tx)
  return writeCalendar(
    sessions.map((session) => ({ ...session, session: keys.get(session.id) ?? session.id })),
    { countsGoals },
  )
}
