import type { Day } from '#common/time'
import type { Attendance, SessionAccount } from '#fairness/account'
import type { PlayerId } from '#squad/player'
import { isMemberOn, type Membership } from '#squad/squad'

/** The sessions that are a player's own: held while it was a member, or come to as a guest. */
export function sessionsOfPlayer(
  accounts: readonly SessionAccount[],
  at: { readonly playerId: PlayerId; readonly memberships: readonly Membership[] },
): readonly SessionAccount[] {
  return accounts.filter(
    ({ day, presences }) =>
      isMemberOn(at.memberships, { playerId: at.playerId, day }) ||
      presences.some(({ playerId }) => playerId === at.playerId),
  )
}

/** How a player was at a session; null when nobody wrote down who was there. */
export type DayAttended = {
  readonly sessionId: string
  readonly day: Day
  readonly attendance: Attendance | null
}

export function playerAttendance(
  accounts: readonly SessionAccount[],
  playerId: PlayerId,
): readonly DayAttended[] {
  return accounts.map(({ sessionId, day, written, presences }) => {
    // Nobody there at all, in what is not written either: the register was never taken.
    const isKnown = written !== 'notWritten' || presences.some(({ attendance }) => attendance !== 'away')
    const own = presences.find((presence) => presence.playerId === playerId)
    return { sessionId, day, attendance: isKnown ? (own?.attendance ?? null) : null }
  })
}
