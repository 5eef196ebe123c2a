import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { allDays, type Day } from '#common/time'
import { listClubPlayers } from '#data/club-players'
import { getClub } from '#data/clubs'
import { listErasedIds } from '#data/erasures'
import type { ClubTx } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { countPitchEvents } from '#data/pitch-events'
import { listSquadPlayers } from '#data/players'
import { listRegisters } from '#data/register-lines'
import { listSeasons } from '#data/seasons'
import { listSessions } from '#data/sessions'
import { getSquad } from '#data/squads'
import type { KnownSession } from '#exchange/attendance/attendance-plan'
import type { KnownCalendarSession } from '#exchange/calendar/calendar-plan'
import type { KnownPlayer } from '#exchange/players/match-player'
import { seasonFor } from '#server/squad-season'
import { todayOf } from '#server/today'
import type { Season, Squad, SquadId } from '#squad/squad'

/** What a file for a squad is compared with. */
export type ImportBook = {
  readonly squad: Squad
  readonly today: Day
  readonly seasons: readonly Season[]
  /** The season that runs, or the nearest. */
  readonly season: Season | null
  /** Players of the squad, and those of other squads whom the viewer may see. */
  readonly known: readonly KnownPlayer[]
}

/** `viewer` null: the command, which sees the club. */
export async function loadImportBook(
  tx: ClubTx,
  { squadId, viewer, now }: { readonly squadId: SquadId; readonly viewer: Viewer | null; readonly now: Date },
): Promise<ImportBook> {
  const squad = await getSquad(tx, squadId)
  const today = todayOf(await getClub(tx), now)
  const seasons = await listSeasons(tx)
  const memberships = await listMemberships(tx, squadId)
  const ofSquad = await listSquadPlayers(tx, squadId)
  const here = new Set(ofSquad.map(({ id }) => id))
  const erased = await listErasedIds(tx)
  const visible = (await listClubPlayers(tx)).filter(
    ({ id, squadIds }) =>
      here.has(id) || viewer === null || may(viewer, 'seePlayer', { kind: 'player', playerId: id, squadIds }),
  )
  // A file written here since finds the nameless column again; an older one, with the name, asks who that is.
  const nameless = ofSquad.filter(({ id }) => erased.has(id))
  const known = [...visible.map(({ squadIds: _, ...player }) => player), ...nameless].map((player) => ({
    ...player,
    isOfSquad: here.has(player.id),
    memberships: memberships.filter(({ playerId }) => playerId === player.id),
  }))
  return { squad, today, seasons, season: seasonFor(seasons, today), known }
}

/** What a calendar is compared with, beside the squad. */
export type CalendarBook = {
  readonly sessions: readonly KnownCalendarSession[]
  readonly countsGoals: boolean
}

export async function loadCalendarBook(tx: ClubTx, squadId: SquadId): Promise<CalendarBook> {
  const sessions = await listSessions(tx, { squadId, ...allDays })
  const tapped = await countPitchEvents(
    tx,
    sessions.map(({ id }) => id),
  )
  return {
    sessions: sessions.map((session) => ({
      ...session,
      isWritten: session.written !== 'notWritten' || tapped.has(session.id),
    })),
    countsGoals: (await getClub(tx)).countsGoals,
  }
}

/** The squad's sessions with their registers, cancelled ones too. */
export async function loadKnownSessions(tx: ClubTx, squadId: SquadId): Promise<readonly KnownSession[]> {
  const sessions = await listSessions(tx, { squadId, ...allDays })
  const registers = await listRegisters(
    tx,
    sessions.map(({ id }) => id),
  )
  return sessions.map((session) => ({ ...session, register: registers.get(session.id) ?? [] }))
}
