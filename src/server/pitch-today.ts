import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import { listSessions } from '#data/sessions'
import { listSquads } from '#data/squads'
import type { PitchToday } from '#pitch/pitch-today'
import { loadClubDay } from '#server/club-day'

/** Today's practices and matches of the squads that the viewer coaches, covers or helps with. */
export async function loadPitchToday(viewer: Viewer, now: Date): Promise<PitchToday> {
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const squads = (await listSquads(tx)).filter(
      ({ id }) => viewer.squadIds.includes(id) && may(viewer, 'tapAtPitch', { kind: 'squad', squadId: id }),
    )
    const practices = await Promise.all(
      squads.map(async ({ id: squadId, name: squadName }) => {
        const of = { squadId, from: today, to: today, withCancelled: false } as const
        const sessions = await listSessions(tx, of)
        return sessions.map(({ id: sessionId, kind, day, title, startsAt }) => ({
          sessionId,
          kind,
          squadName,
          day,
          title,
          startsAt,
        }))
      }),
    )
    return { practices: practices.flat(), isHelper: viewer.role === 'helper' }
  })
}
