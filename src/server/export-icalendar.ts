import 'server-only'
import { listCalendarSessions } from '#data/calendar-sessions'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import type { SquadDays } from '#data/sessions'
import { getSquad } from '#data/squads'
import { writeIcalendar } from '#exchange/icalendar/write-icalendar'
import { eventsOf } from '#server/calendar-feed'

/** Practices and matches for a calendar program, cancelled ones marked; no child's name is in it. */
export async function exportIcalendar(tx: ClubTx, { squadId, from, to }: SquadDays): Promise<string> {
  const { name } = await getSquad(tx, squadId)
  const sessions = await listCalendarSessions(tx, { squadIds: [squadId], from, to })
  const events = await eventsOf(tx, { club: await getClub(tx), sessions })
  return writeIcalendar({ name, refreshHours: null, events })
}
