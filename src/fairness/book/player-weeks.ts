import { groupBy } from '#common/group-by'
import { type Day, isoWeekOf, type Seconds } from '#common/time'
import { type Role, roles } from '#exposure/column'
import type { Attendance, SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'

/** A player's week: what it did in the sessions of it that are written, and what is not. */
export type PlayerWeek = {
  /** ISO week, e.g. `2026-W07`. */
  readonly week: string
  readonly firstDay: Day
  readonly seconds: Readonly<Record<Role, Seconds>>
  readonly written: number
  readonly asPlanned: number
  readonly notWritten: number
  /** How it was at the written ones. */
  readonly attendance: readonly Attendance[]
}

/** The weeks in which anything was held, in order of time; weeks without sessions are left out. `accounts` of one kind. */
export function playerWeeks(accounts: readonly SessionAccount[], playerId: PlayerId): readonly PlayerWeek[] {
  const inOrder = [...accounts].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
  const byWeek = groupBy(inOrder, ({ day }) => isoWeekOf(day))
  return [...byWeek].map(([week, held]) => weekOf({ week, held, playerId }))
}

function weekOf(of: {
  readonly week: string
  readonly held: readonly SessionAccount[]
  readonly playerId: PlayerId
}): PlayerWeek {
  const written = of.held.filter((account) => account.written !== 'notWritten')
  const seconds: Record<Role, Seconds> = { attack: 0, defend: 0, keep: 0, rest: 0 }
  for (const account of written) {
    for (const line of account.lines) if (line.playerId === of.playerId) seconds[line.role] += line.seconds
  }
  return {
    week: of.week,
    firstDay: of.held[0]?.day ?? '',
    seconds: Object.fromEntries(roles.map((role) => [role, seconds[role]])) as Record<Role, Seconds>,
    written: written.length,
    asPlanned: written.filter((account) => account.written === 'asPlanned').length,
    notWritten: of.held.length - written.length,
    attendance: written.flatMap((account) => attendanceAt(account, of.playerId)),
  }
}

function attendanceAt(account: SessionAccount, playerId: PlayerId): readonly Attendance[] {
  const presence = account.presences.find((one) => one.playerId === playerId)
  return presence ? [presence.attendance] : []
}
