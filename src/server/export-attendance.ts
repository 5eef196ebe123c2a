import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listRegisters } from '#data/register-lines'
import { listSessions, type SquadDays } from '#data/sessions'
import { type AttendanceLine, writeAttendance } from '#exchange/attendance/write-attendance'
import { exportKeys } from '#exchange/export-keys'
import { isMemberOn } from '#squad/squad'

/** The registers, a row for each line, and a row for each member who was away from a session that has a register. */
export async function exportAttendance(tx: ClubTx, scope: SquadDays): Promise<string> {
  const sessions = await listSessions(tx, { ...scope, withCancelled: false })
  const registers = await listRegisters(
    tx,
    sessions.map(({ id }) => id),
  )
  const players = await listSquadPlayers(tx, scope.squadId)
  const memberships = await listMemberships(tx, scope.squadId)
  const playerKeys = exportKeys(players)
  const sessionKeys = exportKeys(sessions)
  const lines = sessions.flatMap((session): readonly AttendanceLine[] => {
    const register = registers.get(session.id)
    if (!register) return []
    const { day, kind, title, lengthSeconds } = session
    const frame = { day, kind, title, lengthSeconds, session: sessionKeys.get(session.id) ?? session.id }
    return players.flatMap(({ id, name }): readonly AttendanceLine[] => {
      const who = { ...frame, name, player: playerKeys.get(id) ?? id }
      const own = register.filter(({ playerId }) => playerId === id)
      if (own.length > 0) return own.map(({ state, from, to }) => ({ ...who, state, from, to }))
      const isAway = isMemberOn(memberships, { playerId: id, day })
      return isAway ? [{ ...who, state: 'away', from: null, to: null }] : []
    })
  })
  return writeAttendance(lines)
}
