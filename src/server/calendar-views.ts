import 'server-only'
import { may } from '#access/may'
import { sayAgo } from '#access/say-ago'
import type { Day } from '#common/time'
import { findStandingFeed } from '#data/calendar-feeds'
import { inClub } from '#data/in-club'
import { listSessionsFor, listSquadsFor } from '#server/calendar-scope'
import { loadClubDay } from '#server/club-day'
import { findSignedIn } from '#server/viewer'
import type { Squad } from '#squad/squad'

/** What one's own calendar program reads of the club that is looked at now. The address is not in it: it was shown once. */
export type OwnCalendar = {
  readonly clubName: string
  /** That there is anything to be had of; by age. */
  readonly squads: readonly Squad[]
  /** Some of them are its children's. */
  readonly isFamily: boolean
  /** All of them are, and as it stands nothing of them is shown. */
  readonly isEmpty: boolean
  /** Null: no address stands. */
  readonly standing: {
    readonly id: string
    readonly made: string
    /** Null: all squads. Those that are no longer the viewer's are left out. */
    readonly squadNames: readonly string[] | null
    readonly lastReadOn: Day | null
  } | null
}

/** Null: nobody of a club, or no squad concerns it and none did. */
export async function viewOwnCalendar(now = new Date()): Promise<OwnCalendar | null> {
  const viewer = await findSignedIn()
  if (!viewer) return null
  const squads = await listSquadsFor(viewer)
  const isCoaching = squads.some(({ id }) => may(viewer, 'seeSquad', { kind: 'squad', squadId: id }))
  const { club, feed, today } = await inClub(viewer.clubId, async (tx) => ({
    ...(await loadClubDay(tx, now)),
    feed: await findStandingFeed(tx, viewer.personId),
  }))
  if (squads.length === 0 && !feed) return null
  const isEmpty = !isCoaching && (await listSessionsFor(viewer, { today, only: [] })).length === 0
  return {
    clubName: club.name,
    squads,
    isFamily: viewer.playerIds.length > 0,
    isEmpty,
    standing: feed && {
      id: feed.id,
      made: sayAgo({ moment: feed.madeAt, now }),
      squadNames:
        feed.squadIds.length === 0
          ? null
          : squads.filter(({ id }) => feed.squadIds.includes(id)).map(({ name }) => name),
      lastReadOn: feed.lastReadOn,
    },
  }
}
