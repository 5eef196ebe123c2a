import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { recordMemberships } from '#data/memberships'
import { recordPlayers } from '#data/players'
import { recordRegisters } from '#data/register-lines'
import { recordSessions } from '#data/sessions'
import type { AttendancePlan, PlannedSession } from '#exchange/attendance/attendance-plan'
import { afterImport } from '#server/after-import'
import type { ImportBook } from '#server/import-book'
import type { PlayerId } from '#squad/player'

export type AttendanceImported = {
  readonly newPlayers: number
  readonly newSessions: number
  readonly registers: number
}

/**
 * Writes an attendance list that is ready. Its days become sessions with a register and nothing else: they stay marked as
 * not written, so attendance counts, and what nobody wrote down is never drawn as zero turns.
 */
export async function saveAttendance(
  tx: ClubTx,
  { plan, book, by }: { readonly plan: AttendancePlan; readonly book: ImportBook; readonly by: Author },
): Promise<AttendanceImported> {
  const squadId = book.squad.id
  const written = plan.sessions.filter(({ outcome }) => outcome.kind === 'new' || outcome.kind === 'fill')
  const needed = new Set(
    written.flatMap((session) => [...session.register.map((line) => line.player), ...session.away]),
  )
  const players = plan.players.filter(({ line }) => needed.has(line))
  const playerIds = await enterPlayers(tx, { squadId, players })
  const sessionIds = await enterSessions(tx, { squadId, sessions: written })
  const registers = written.map((session) => ({
    sessionId: sessionIds.get(session.key) as string,
    lines: session.register.map(({ player, ...line }) => ({
      ...line,
      playerId: playerIds.get(player) as PlayerId,
    })),
  }))
  await recordRegisters(tx, { registers, by })
  const joined = players.flatMap(({ outcome }) => (outcome.kind === 'new' ? [outcome.firstDay] : []))
  const imported = {
    newPlayers: players.filter(({ outcome }) => outcome.kind === 'new' || outcome.kind === 'guest').length,
    newSessions: written.filter(({ outcome }) => outcome.kind === 'new').length,
    registers: registers.length,
  }
  await recordAudit(tx, {
    action: 'importAttendance',
    objectKind: 'squad',
    objectId: squadId,
    detail: imported,
    by,
  })
  await afterImport(tx, {
    squadId,
    from: [...joined, ...written.map(({ name }) => name.day)].sort()[0] ?? book.today,
    keepingChanged: [],
    today: book.today,
    now: by.at,
  })
  return imported
}

async function enterPlayers(
  tx: ClubTx,
  { squadId, players }: { readonly squadId: string; readonly players: AttendancePlan['players'] },
): Promise<ReadonlyMap<number, PlayerId>> {
  const ids = new Map<number, PlayerId>()
  const entered = []
  const memberships = []
  for (const { line, name, outcome } of players) {
    if (outcome.kind === 'known') ids.set(line, outcome.playerId)
    if (outcome.kind !== 'new' && outcome.kind !== 'guest') continue
    const id = newId()
    ids.set(line, id)
    entered.push({ id, name, code: outcome.code, keeps: true, wantsToKeep: false })
    if (outcome.kind === 'new') memberships.push({ playerId: id, firstDay: outcome.firstDay, lastDay: null })
  }
  await recordPlayers(tx, entered)
  await recordMemberships(tx, { squadId, memberships })
  return ids
}

async function enterSessions(
  tx: ClubTx,
  { squadId, sessions }: { readonly squadId: string; readonly sessions: readonly PlannedSession[] },
): Promise<ReadonlyMap<string, string>> {
  const ids = new Map<string, string>()
  const entered = []
  for (const { key, name, outcome } of sessions) {
    if (outcome.kind === 'fill') ids.set(key, outcome.sessionId)
    if (outcome.kind !== 'new') continue
    const id = newId()
    ids.set(key, id)
    const { day, kind, title, code } = name
    const lengthSeconds = kind === 'practice' ? outcome.lengthSeconds : null
    entered.push({
      id,
      squadId,
      day,
      kind,
      title,
      code,
      lengthSeconds,
      startsAt: null,
      periods: null,
      designId: null,
      ledById: null,
    })
  }
  await recordSessions(tx, entered)
  return ids
}
