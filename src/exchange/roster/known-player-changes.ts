import { shareADay } from '#common/dated'
import type { Day } from '#common/time'
import type { KnownPlayer } from '#exchange/players/match-player'
import type { RosterEntry } from '#exchange/roster/roster-entry'
import type { MemberDays, PlayerChange, PlayerNote } from '#exchange/roster/roster-plan'
import type { Membership } from '#squad/squad'

/** What a row changes on a player of the book, and what it says otherwise without changing it. */
export function knownPlayerChanges(
  player: KnownPlayer,
  entry: RosterEntry,
  defaultFirstDay: Day,
): { readonly changes: readonly PlayerChange[]; readonly notes: readonly PlayerNote[] } {
  const days = { firstDay: entry.firstDay ?? defaultFirstDay, lastDay: entry.lastDay }
  const member = memberChanges(player.memberships, days, entry)
  const changes: PlayerChange[] = [...member.changes]
  if (entry.keeps !== null && entry.keeps !== player.keeps) changes.push({ kind: 'keeps', to: entry.keeps })
  if (entry.wantsToKeep !== null && entry.wantsToKeep !== player.wantsToKeep) {
    changes.push({ kind: 'wantsToKeep', to: entry.wantsToKeep })
  }
  return { changes, notes: member.notes }
}

function memberChanges(
  memberships: readonly Membership[],
  days: MemberDays,
  entry: RosterEntry,
): { readonly changes: readonly PlayerChange[]; readonly notes: readonly PlayerNote[] } {
  const overlapping = memberships.filter((membership) => shareADay(membership, days))
  const [held] = overlapping
  if (!held) {
    // A row without days says that the player is there now; the days it had before stand as they are.
    return { changes: [{ kind: 'joins', days }], notes: [] }
  }
  const notes: PlayerNote[] = []
  if (entry.firstDay !== null && overlapping.every((m) => m.firstDay !== entry.firstDay))
    notes.push('otherFirstDay')
  if (entry.lastDay === null) {
    if (entry.firstDay === null && memberships.every((m) => m.lastDay !== null)) notes.push('leftBefore')
    return { changes: [], notes }
  }
  if (held.lastDay === null && entry.lastDay >= held.firstDay)
    return { changes: [{ kind: 'ends', lastDay: entry.lastDay }], notes }
  if (overlapping.every((m) => m.lastDay !== entry.lastDay)) notes.push('otherLastDay')
  return { changes: [], notes }
}
