import type { AttendanceRecord } from '#ahead/attendance/expected-attendance'
import type { SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'

/** How often each player came, of the practices held while it belonged to the squad; who is in none is left out. */
export function attendanceSoFar(
  accounts: readonly SessionAccount[],
): ReadonlyMap<PlayerId, AttendanceRecord> {
  const records = new Map<PlayerId, AttendanceRecord>()
  for (const { playerId, isMember, attendance } of accounts.flatMap(({ presences }) => presences)) {
    if (!isMember) continue
    const { came, held } = records.get(playerId) ?? { came: 0, held: 0 }
    records.set(playerId, { came: came + (attendance === 'away' ? 0 : 1), held: held + 1 })
  }
  return records
}
