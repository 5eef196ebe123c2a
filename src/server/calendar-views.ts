import 'server-only'
import { sayAgo } from '#access/say-ago'
import type { Day } from '#common/time'
import { findStandingFeed } from '#data/calendar-feeds'
import { getClub } from '#data/clubs'
import { inClub } from '#data/in-club'
import { listSquadsFor } from '#server/calendar-scope'
import { findSignedIn } from '#server/viewer'
import type { Squad } from '#squad/squad'

/** What one's own calendar program reads of the club that is looked at now. The address is not in it: it was shown once. */
export type OwnCalendar = {
  readonly clubName: string
  /** That there is anything to be had of; by age. */
  readonly squads: readonly Squad[]
  /** Some of them are its children's. */
  readonly isFamily: boolean
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
  return inClub(viewer.clubId, async (tx) => {
    const feed = await findStandingFeed(tx, viewer.personId)
    if (squads.length === 0 && !feed) return null
    const { name: clubName } = await getClub(tx)
    return {
      clubName,
      squads,
      isFamily: viewer.playerIds.length > 0,
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
  })
}
