import { hasDay } from '#common/dated'
import type { AttendanceEntry } from '#exchange/attendance/attendance-entry'
import type {
  AttendancePlan,
  AttendancePlanning,
  KnownSession,
  PlannedLine,
  PlannedPlayer,
  PlannedSession,
} from '#exchange/attendance/attendance-plan'
import { matchSession } from '#exchange/attendance/match-session'
import { groupByPlayer, planPlayers, understoodRows } from '#exchange/attendance/player-groups'
import { type RegisterReading, readRegister } from '#exchange/attendance/register-lines'
import { groupBySession, type SessionGroup } from '#exchange/attendance/session-groups'
import type { RowReading } from '#exchange/table/row-reading'
import { attendanceOf } from '#fairness/attendance'

/** What an attendance list does to a squad's book: players, and sessions with their registers. Nothing is written. */
export function planAttendance(
  rows: readonly RowReading<AttendanceEntry>[],
  planning: AttendancePlanning,
): AttendancePlan {
  const groups = groupByPlayer(understoodRows(rows))
  const players = planPlayers(groups, planning)
  const leftOut = new Set(players.flatMap(({ line, outcome }) => (outcome.kind === 'leftOut' ? [line] : [])))
  const sessionGroups = groupBySession(groups.filter((group) => !leftOut.has(group.line)))
  const playerAt = new Map(players.map((player) => [player.line, player]))
  const planned = sessionGroups.map((group) => planSession(group, playerAt, planning))
  return {
    players,
    sessions: askAboutShared(planned.map(({ session }) => session)),
    doubledRows: planned.flatMap(({ doubled }) => doubled),
    openRows: rows.flatMap(({ line, result }) =>
      result.kind === 'problem' && planning.answers.get(line)?.kind !== 'leaveOut' ? [line] : [],
    ),
  }
}

type PlannedGroup = { readonly session: PlannedSession; readonly doubled: RegisterReading['doubled'] }

function planSession(
  group: SessionGroup,
  players: ReadonlyMap<number, PlannedPlayer>,
  planning: AttendancePlanning,
): PlannedGroup {
  const match = matchSession(planning.sessions, group.name)
  const held = match.kind === 'one' ? match.session : null
  const lengthSeconds = group.name.lengthSeconds ?? held?.lengthSeconds ?? planning.lengthSeconds
  const register = readRegister(group, { lengthSeconds, lateSeconds: planning.lateSeconds })
  const outcome = planning.leftOutSessions.has(group.key)
    ? ({ kind: 'leftOut' } as const)
    : (hindrance(group, register, planning) ??
      outcomeOf(match, register, players, newLength(group, planning)))
  const session = { key: group.key, name: group.name, outcome, register: register.lines, away: register.away }
  return { session, doubled: register.doubled }
}

/** A length that nobody wrote down is only supposed where some line needs it. */
function newLength({ name, marks }: SessionGroup, planning: AttendancePlanning): number | null {
  const needsLength = marks.some(({ mark }) => mark.meaning !== 'away' && mark.toSecond === null)
  return name.lengthSeconds ?? (needsLength ? planning.lengthSeconds : null)
}

/** What keeps a session out whatever the book has. */
function hindrance(
  group: SessionGroup,
  register: RegisterReading,
  planning: AttendancePlanning,
): PlannedSession['outcome'] | null {
  const { day } = group.name
  if (group.days.length > 1) {
    return {
      kind: 'problem',
      problems: [`The session ${group.name.code} has two days: ${group.days.join(' and ')}.`],
    }
  }
  if (register.problems.length > 0) return { kind: 'problem', problems: register.problems }
  if (day > planning.today) return { kind: 'question', why: 'afterToday' }
  const isInSeason = planning.seasons.some((season) => hasDay(season, day))
  if (!isInSeason) return { kind: 'question', why: 'outsideSeasons' }
  return register.lines.length === 0 ? { kind: 'question', why: 'nobodyThere' } : null
}

function outcomeOf(
  match: ReturnType<typeof matchSession>,
  register: RegisterReading,
  players: ReadonlyMap<number, PlannedPlayer>,
  lengthSeconds: number | null,
): PlannedSession['outcome'] {
  if (match.kind === 'nobody') return { kind: 'new', lengthSeconds }
  if (match.kind === 'several') return { kind: 'question', why: 'severalThatDay' }
  const { session } = match
  if (match.kind === 'otherDay') {
    return {
      kind: 'problem',
      problems: [`The book has this session as a ${session.kind} on ${session.day}.`],
    }
  }
  if (session.isCancelled) return { kind: 'question', why: 'cancelled' }
  if (session.register.length === 0) return { kind: 'fill', sessionId: session.id }
  return hasRegister(session, register.lines, players)
    ? { kind: 'same', sessionId: session.id }
    : { kind: 'question', why: 'otherRegister' }
}

/** Whether the book says of everyone what the file says: here, late, not playing, out or away. */
function hasRegister(
  session: KnownSession,
  lines: readonly PlannedLine[],
  players: ReadonlyMap<number, PlannedPlayer>,
): boolean {
  const idOf = (line: PlannedLine) => {
    const outcome = players.get(line.player)?.outcome
    return outcome?.kind === 'known' ? outcome.playerId : `line ${line.player}`
  }
  const told = lines.map((line) => ({
    playerId: idOf(line),
    state: line.state,
    from: line.from,
    to: line.to,
  }))
  const ids = new Set([...told, ...session.register].map((line) => line.playerId))
  const of = (register: typeof told | KnownSession['register'], id: string) =>
    attendanceOf(
      register.filter((line) => line.playerId === id),
      null,
    )
  return [...ids].every((id) => of(told, id) === of(session.register, id))
}

/** Two sessions of the file that came out as one of the book: a person must say which it is. */
function askAboutShared(sessions: readonly PlannedSession[]): readonly PlannedSession[] {
  const idOf = ({ outcome }: PlannedSession) => ('sessionId' in outcome ? outcome.sessionId : null)
  const ids = sessions.map(idOf).filter((id) => id !== null)
  const shared = new Set(ids.filter((id, at) => ids.indexOf(id) !== at))
  return sessions.map((session) =>
    shared.has(idOf(session) ?? '')
      ? { ...session, outcome: { kind: 'question', why: 'severalThatDay' } }
      : session,
  )
}
