import 'server-only'
import { groupBy } from '#common/group-by'
import type { Day } from '#common/time'
import { dateOf, dayOf } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { periodList } from '#data/sessions'
import type { SessionInCalendar } from '#exchange/icalendar/event-of-session'
import type { SquadId } from '#squad/squad'

export type CalendarSession = SessionInCalendar & { readonly squadId: SquadId }

/** Sessions of squads as a calendar shows them, cancelled ones too; both days included. In order of time. */
export async function listCalendarSessions(
  tx: ClubTx,
  at: { readonly squadIds: readonly SquadId[]; readonly from: Day; readonly to: Day },
): Promise<readonly CalendarSession[]> {
  const rows = await tx.db.session.findMany({
    where: {
      clubId: tx.clubId,
      squadId: { in: at.squadIds.filter(isId) },
      day: { gte: dateOf(at.from), lte: dateOf(at.to) },
    },
    select: {
      id: true,
      squadId: true,
      kind: true,
      day: true,
      title: true,
      startsAt: true,
      place: true,
      lengthSeconds: true,
      periods: true,
      cancelledAt: true,
      revision: true,
      revisedAt: true,
      squad: { select: { name: true } },
      theme: { select: { name: true } },
      design: { select: { theme: { select: { name: true } } } },
    },
    orderBy: [{ day: 'asc' }, { startsAt: { sort: 'asc', nulls: 'first' } }, { id: 'asc' }],
  })
  return rows.map(({ squad, theme, design, periods, cancelledAt, ...row }) => ({
    ...row,
    day: dayOf(row.day),
    squadName: squad.name,
    themeName: (theme ?? design?.theme)?.name ?? null,
    lengthSeconds: row.lengthSeconds ?? periodList.parse(periods)?.at(-1)?.end ?? null,
    isCancelled: cancelledAt !== null,
  }))
}

/** What the children are called who are or were in each of these squads. */
export async function listNamesBySquad(
  tx: ClubTx,
  squadIds: readonly SquadId[],
): Promise<ReadonlyMap<SquadId, readonly string[]>> {
  const rows = await tx.db.squadMembership.findMany({
    where: { clubId: tx.clubId, squadId: { in: squadIds.filter(isId) }, player: { erasedAt: null } },
    select: { squadId: true, player: { select: { name: true } } },
    distinct: ['squadId', 'playerId'],
  })
  const bySquad = groupBy(rows, ({ squadId }) => squadId)
  return new Map([...bySquad].map(([squadId, own]) => [squadId, own.map(({ player }) => player.name)]))
}
