import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import { getClub } from '#data/clubs'
import { listDesigns, listEveryDesign } from '#data/designs'
import { inClub } from '#data/in-club'
import { listPeople } from '#data/people'
import { listSessions, type Session } from '#data/sessions'
import { listSquadCoaches, type SquadCoach } from '#data/squad-coaches'
import { forgetGuestsWhenDue } from '#server/forget-guests'
import { forgetTodayWhenDue } from '#server/forget-today'
import { loadFrame } from '#server/page-frame'
import { loadSquadSeason } from '#server/squad-season'
import type { SquadId } from '#squad/squad'

/** A line of the list: what a coach needs to find a session and see whether it is written. */
export type SessionLine = Pick<
  Session,
  'id' | 'kind' | 'day' | 'title' | 'startsAt' | 'written' | 'isCancelled' | 'goals'
> & {
  /** Of the design it was planned by. */
  readonly designName: string | null
  /** Who led it in the coach's place; null: the squad's own coach, or nobody knows. */
  readonly coveredByName: string | null
}

/** The practices and matches of a squad's season: to come in order of days, held ones the latest first. */
export async function loadSessionList(viewer: Viewer, { squadId }: { readonly squadId: SquadId }) {
  return inClub(viewer.clubId, async (tx) => {
    const { squad, season, today } = await loadSquadSeason(tx, viewer, { squadId })
    await forgetGuestsWhenDue(tx, { today })
    await forgetTodayWhenDue(tx, { today })
    const sessions = await listSessions(tx, { squadId, from: season.firstDay, to: season.lastDay })
    const coaches = await listSquadCoaches(tx, squadId)
    const names = new Map((await listPeople(tx)).map(({ id, name }) => [id, name]))
    const designs = new Map((await listEveryDesign(tx)).map(({ id, name }) => [id, name]))
    const { countsGoals } = await getClub(tx)
    const lines = sessions.map((session) => ({
      ...lineOf(session, { coaches, names, countsGoals }),
      designName: (session.designId && designs.get(session.designId)) || null,
    }))
    // What is played later today, as far as the book knows, is still to come.
    const isToCome = ({ day, written, isCancelled }: SessionLine) =>
      day > today || (day === today && written === 'notWritten' && !isCancelled)
    const held = lines.filter((line) => !isToCome(line))
    const counted = held.filter(({ isCancelled }) => !isCancelled)
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      seasonName: season.name,
      today,
      toCome: lines.filter(isToCome),
      held: held.toReversed(),
      heldCount: counted.length,
      writtenCount: counted.filter(({ written }) => written !== 'notWritten').length,
    }
  })
}

/** What the form of a new session offers. */
export async function loadNewSession(viewer: Viewer, { squadId }: { readonly squadId: SquadId }) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId })
    const { squad, season, today } = await loadSquadSeason(tx, viewer, { squadId })
    const coaches = (await listSquadCoaches(tx, squadId)).filter((coach) => hasDay(coach, today))
    const leaders = coaches.map(({ personId, personName, kind }) => ({
      id: personId,
      name: personName,
      kind,
    }))
    const isLeader = leaders.some(({ id }) => id === viewer.personId)
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      today,
      season: { firstDay: season.firstDay, lastDay: season.lastDay },
      designs: (await listDesigns(tx)).map(({ id, name }) => ({ id, name })),
      leaders: isLeader
        ? leaders
        : [...leaders, { id: viewer.personId, name: viewer.name, kind: 'cover' as const }],
      leaderId: isLeader
        ? viewer.personId
        : (leaders.find(({ kind }) => kind === 'coach')?.id ?? viewer.personId),
    }
  })
}

function lineOf(
  session: Session,
  known: {
    readonly coaches: readonly SquadCoach[]
    readonly names: ReadonlyMap<string, string>
    readonly countsGoals: boolean
  },
): Omit<SessionLine, 'designName'> {
  const { id, kind, day, title, startsAt, written, isCancelled } = session
  const goals = known.countsGoals ? session.goals : null
  const coveredByName = coverNameOf(session, known)
  return { id, kind, day, title, startsAt, written, isCancelled, goals, coveredByName }
}

/** Who led a session without being the squad's coach on its day. */
export function coverNameOf(
  { ledById, day }: Pick<Session, 'ledById' | 'day'>,
  {
    coaches,
    names,
  }: { readonly coaches: readonly SquadCoach[]; readonly names: ReadonlyMap<string, string> },
): string | null {
  if (!ledById) return null
  const isCoach = coaches.some((one) => one.personId === ledById && one.kind === 'coach' && hasDay(one, day))
  return isCoach ? null : (names.get(ledById) ?? null)
}
