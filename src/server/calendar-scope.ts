import 'server-only'
import { may, mayAsGuardian } from '#access/may'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import { daysLater } from '#common/days-later'
import { allDays, type Day } from '#common/time'
import { type CalendarSession, listCalendarSessions } from '#data/calendar-sessions'
import { listGuardianships } from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { listMembershipsOf } from '#data/memberships'
import { listShowingSquadIds } from '#data/shows-coming'
import { listSquads } from '#data/squads'
import type { Membership, Squad, SquadId } from '#squad/squad'

/** A coach finds in a calendar what was held lately too. */
const daysBack = 60

type Asked = {
  readonly today: Day
  /** Only of these squads; empty: of all. */
  readonly only: readonly SquadId[]
}

/**
 * What a calendar of this viewer may show, as its access stands at this moment: all sessions of the squads it coaches,
 * and what comes for its own children where their families are told. In order of time.
 */
export async function listSessionsFor(viewer: Viewer, asked: Asked): Promise<readonly CalendarSession[]> {
  const coached = await inClub(viewer.clubId, (tx) => listCoached(tx, viewer, asked))
  const ofChildren =
    viewer.playerIds.length > 0
      ? await inClub(viewer.clubId, (tx) => listOfChildren(tx, viewer, asked), {
          guardianId: viewer.personId,
        })
      : []
  const byId = new Map([...ofChildren, ...coached].map((session) => [session.id, session]))
  return [...byId.values()].sort(
    (a, b) => a.day.localeCompare(b.day) || (a.startsAt ?? '').localeCompare(b.startsAt ?? ''),
  )
}

/** Squads whose sessions concern the viewer, whether or not any is shown now; by age. */
export async function listSquadsFor(viewer: Viewer): Promise<readonly Squad[]> {
  return inClub(viewer.clubId, async (tx) => {
    const ofChildren = (await listChildDays(tx, viewer)).map(({ squadId }) => squadId)
    const squads = await listSquads(tx)
    return squads.filter(({ id }) => isCoached(viewer, id) || ofChildren.includes(id))
  })
}

const isCoached = (viewer: Viewer, squadId: SquadId) => may(viewer, 'seeSquad', { kind: 'squad', squadId })

async function listCoached(tx: ClubTx, viewer: Viewer, { today, only }: Asked) {
  const squadIds = (await listSquads(tx))
    .map(({ id }) => id)
    .filter((id) => isCoached(viewer, id) && isAsked(id, only))
  return listCalendarSessions(tx, { squadIds, from: daysLater(today, -daysBack), to: allDays.to })
}

async function listOfChildren(tx: ClubTx, viewer: Viewer, { today, only }: Asked) {
  const withheld = (await listGuardianships(tx, { personId: viewer.personId }))
    .filter(({ withholdsComing }) => withholdsComing)
    .map(({ playerId }) => playerId)
  const days = (await listChildDays(tx, viewer)).filter(
    ({ playerId, squadId }) => !withheld.includes(playerId) && isAsked(squadId, only),
  )
  const squadIds = await listShowingSquadIds(
    tx,
    days.map(({ squadId }) => squadId),
  )
  const sessions = await listCalendarSessions(tx, { squadIds, from: today, to: allDays.to })
  return sessions.filter(({ squadId, day }) =>
    days.some((member) => member.squadId === squadId && hasDay(member, day)),
  )
}

/** When the viewer's children are members of which squads. */
async function listChildDays(tx: ClubTx, viewer: Viewer) {
  const days: (Membership & { readonly squadId: SquadId })[] = []
  for (const playerId of viewer.playerIds) {
    const own = await listMembershipsOf(tx, playerId)
    const squadIds = own.map(({ squadId }) => squadId)
    if (mayAsGuardian(viewer, 'seeFamilyPage', { kind: 'player', playerId, squadIds })) days.push(...own)
  }
  return days
}

function isAsked(squadId: SquadId, only: readonly SquadId[]): boolean {
  return only.length === 0 || only.includes(squadId)
}
