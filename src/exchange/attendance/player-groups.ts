import type { AttendanceEntry } from '#exchange/attendance/attendance-entry'
import type { AttendancePlanning, PlannedPlayer } from '#exchange/attendance/attendance-plan'
import type { RowAnswer } from '#exchange/players/answer'
import { indexPlayers, type KnownPlayer, matchPlayer, type PlayerIndex } from '#exchange/players/match-player'
import { nameKey } from '#exchange/table/name-form'
import type { RowReading } from '#exchange/table/row-reading'

export type NumberedAttendance = { readonly line: number; readonly entry: AttendanceEntry }

/** The rows of one player of the file: one code, or one name with one shirt. Never empty. */
export type PlayerGroup = { readonly line: number; readonly rows: readonly NumberedAttendance[] }

export function understoodRows(rows: readonly RowReading<AttendanceEntry>[]): readonly NumberedAttendance[] {
  return rows.flatMap(({ line, result }) =>
    result.kind === 'understood' ? [{ line, entry: result.entry }] : [],
  )
}

export function groupByPlayer(rows: readonly NumberedAttendance[]): readonly PlayerGroup[] {
  const groups = new Map<string, { line: number; rows: NumberedAttendance[] }>()
  for (const row of rows) {
    const { code, name, shirt } = row.entry
    const key = code === null ? `name ${nameKey(name)} ${shirt ?? ''}` : `code ${code}`
    const group = groups.get(key)
    if (group) group.rows.push(row)
    else groups.set(key, { line: row.line, rows: [row] })
  }
  return [...groups.values()]
}

/** Who each player of the file is; the question of a player stands at its first row. */
export function planPlayers(
  groups: readonly PlayerGroup[],
  planning: AttendancePlanning,
): readonly PlannedPlayer[] {
  const index = indexPlayers(planning.known)
  const players = groups.map((group) => planPlayer(group, index, planning))
  return askAboutShared(players, groups, planning.known)
}

function planPlayer(group: PlayerGroup, index: PlayerIndex, planning: AttendancePlanning): PlannedPlayer {
  const entry = group.rows[0]?.entry ?? { name: '', code: null }
  const made = (outcome: PlannedPlayer['outcome']) => ({ line: group.line, name: entry.name, outcome })
  const other = group.rows.find((row) => nameKey(row.entry.name) !== nameKey(entry.name))
  if (other) {
    const names = `“${entry.name}” and, in line ${other.line}, “${other.entry.name}”`
    return made({
      kind: 'problem',
      problems: [`The code ${entry.code} stands at ${names}. A code belongs to one player.`],
    })
  }
  const answer = planning.answers.get(group.line)
  if (answer) return made(answered(answer, group, planning))
  const match = matchPlayer(index, entry)
  if (match.kind === 'one') return made({ kind: 'known', playerId: match.player.id })
  if (match.kind === 'question') return made(match)
  if (entry.name === '')
    return made({ kind: 'problem', problems: [`The book has no player with the code ${entry.code}.`] })
  return made(
    planning.newPlayers === 'add' ? newPlayer(group) : { kind: 'question', why: 'notKnown', candidates: [] },
  )
}

function answered(
  answer: RowAnswer,
  group: PlayerGroup,
  planning: AttendancePlanning,
): PlannedPlayer['outcome'] {
  if (answer.kind === 'leaveOut') return { kind: 'leftOut' }
  if (answer.kind === 'new') return newPlayer(group)
  if (answer.kind === 'guest') return { kind: 'guest', code: group.rows[0]?.entry.code ?? null }
  return planning.known.some((player) => player.id === answer.playerId)
    ? { kind: 'known', playerId: answer.playerId }
    : { kind: 'problem', problems: ['The player chosen here is no longer in the book. Choose again.'] }
}

/** A new player is a member from the first day the file has of it. */
function newPlayer(group: PlayerGroup): PlannedPlayer['outcome'] {
  const days = group.rows.flatMap(({ entry }) => entry.marks.map((mark) => mark.session.day)).sort()
  const [firstDay] = days
  const code = group.rows[0]?.entry.code ?? null
  return firstDay ? { kind: 'new', code, firstDay } : { kind: 'leftOut' }
}

/** Two players of the file that came out as one of the book: ask for both, unless it is one name with and without its code. */
function askAboutShared(
  players: readonly PlannedPlayer[],
  groups: readonly PlayerGroup[],
  known: readonly KnownPlayer[],
): readonly PlannedPlayer[] {
  const groupsOf = new Map<string, number[]>()
  for (const [at, { outcome }] of players.entries()) {
    if (outcome.kind === 'known')
      groupsOf.set(outcome.playerId, [...(groupsOf.get(outcome.playerId) ?? []), at])
  }
  return players.map((player) => {
    if (player.outcome.kind !== 'known') return player
    const { playerId } = player.outcome
    const sharing = (groupsOf.get(playerId) ?? []).map((at) => groups[at]?.rows[0]?.entry)
    const isOneName = new Set(sharing.map((entry) => nameKey(entry?.name ?? ''))).size === 1
    const isOneShirt = new Set(sharing.map((entry) => entry?.shirt ?? null)).size === 1
    if (sharing.length < 2 || (isOneName && isOneShirt)) return player
    const candidates = known.filter((one) => one.id === playerId)
    return { ...player, outcome: { kind: 'question', why: 'oneForTwoNames', candidates } }
  })
}
