import 'server-only'
import { findCalendarFeed, noteFeedRead } from '#data/calendar-feeds'
import { type CalendarSession, listNamesBySquad } from '#data/calendar-sessions'
import { type Club, findClub } from '#data/clubs'
import { type ClubTx, inClub } from '#data/in-club'
import type { CalendarEvent } from '#exchange/icalendar/calendar-event'
import { eventOfSession } from '#exchange/icalendar/event-of-session'
import { writeIcalendar } from '#exchange/icalendar/write-icalendar'
import { listSessionsFor } from '#server/calendar-scope'
import { findViewer } from '#server/find-viewer'
import { isSecretOf } from '#server/helper-secret'
import type { LinkCode } from '#server/link-code'
import { dayIn, todayOf } from '#server/today'

/** Practices are moved on the day before, seldom on the day itself. */
const refreshHours = 4

/** A person's calendar for whoever has its secret; null when the code opens nothing, whatever the reason. */
export async function findCalendarOf(code: LinkCode, now = new Date()): Promise<string | null> {
  const { clubId, linkId: feedId, secret } = code
  const known = await inClub(clubId, async (tx) => {
    const club = await findClub(tx)
    const feed = await findCalendarFeed(tx, feedId)
    return club && feed && { club, feed }
  })
  if (!known || !isSecretOf(secret, known.feed.secretHash) || known.feed.revokedAt) return null
  const { club, feed } = known
  // As its role, squads and children stand now: nothing is kept of what it once could see.
  const viewer = await findViewer({ clubId, personId: feed.personId })
  if (!viewer) return null
  const sessions = await listSessionsFor(viewer, { today: todayOf(club, now), only: feed.squadIds })
  const day = dayIn(club.timeZone, now)
  const events = await inClub(clubId, async (tx) => {
    if (feed.lastReadOn !== day) await noteFeedRead(tx, { feedId, day })
    return eventsOf(tx, { club, sessions })
  })
  return writeIcalendar({ name: club.name, refreshHours, events })
}

/** Sessions as entries of a calendar, in the club's time and without any child's name. */
export async function eventsOf(
  tx: ClubTx,
  { club, sessions }: { readonly club: Club; readonly sessions: readonly CalendarSession[] },
): Promise<readonly CalendarEvent[]> {
  const names = await listNamesBySquad(tx, [...new Set(sessions.map(({ squadId }) => squadId))])
  return sessions.map((session) =>
    eventOfSession(session, { timeZone: club.timeZone, names: names.get(session.squadId) ?? [] }),
  )
}
