import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { shareADay } from '#common/dated'
import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { changeMembership, recordMemberships } from '#data/memberships'
import { lockSquad } from '#data/squad-lock'
import { type Done, saved } from '#server/action'
import { countedSentence } from '#server/change-player'
import { loadClubDay } from '#server/club-day'
import { countAnew, countingTimeoutMs } from '#server/count-anew'
import { openMember } from '#server/open-player'
import type { MembershipInput } from '#server/player-input'
import type { Membership } from '#squad/squad'

/**
 * From when to when a player belongs to the squad; without `heldFrom` once more. What was held outside those days is a
 * guest's, and nobody's to be missed. @throws AppError `notAllowed` or `notFound`.
 */
export async function changeMembershipOf(
  viewer: Viewer,
  { squadId, playerId, heldFrom, firstDay, lastDay }: MembershipInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      await lockSquad(tx, squadId)
      const { player, memberships } = await openMember(tx, viewer, { squadId, playerId })
      const held = memberships.find((one) => one.firstDay === heldFrom) ?? null
      if (heldFrom !== null && !held)
        throw new AppError('conflict', `no membership of ${playerId} from ${heldFrom}`)
      const others = memberships.filter((one) => one !== held)
      const problems = problemsOfDays({ firstDay, lastDay }, others)
      if (problems.length > 0) return refuse(...problems)
      const from = firstDayTouched(held, { firstDay, lastDay })
      if (from === null) return refuse({ path: '', message: 'These are the days that stand there already.' })
      if (held)
        await changeMembership(tx, { squadId, playerId, heldFrom: held.firstDay }, { firstDay, lastDay })
      else await recordMemberships(tx, { squadId, memberships: [{ playerId, firstDay, lastDay }] })
      const by = { personId: viewer.personId, at: now }
      const detail = { squadId, heldFrom, firstDay, lastDay }
      await recordAudit(tx, {
        action: 'changeMembership',
        objectKind: 'player',
        objectId: playerId,
        detail,
        by,
      })
      const counted = await countAnew(tx, { squadIds: [squadId], from, today, now })
      const until = lastDay === null ? '' : ` to ${lastDay}`
      return saved(
        `${player.name} belongs to the squad from ${firstDay}${until}. ${countedSentence(counted)}`,
      )
    },
    { timeoutMs: countingTimeoutMs },
  )
}

type Days = Pick<Membership, 'firstDay' | 'lastDay'>

/** Why these cannot be days of a player in a squad. `others`: its other days there. */
export function problemsOfDays({ firstDay, lastDay }: Days, others: readonly Days[]): readonly Problem[] {
  if (lastDay !== null && lastDay < firstDay)
    return [
      { path: 'lastDay', message: `is before ${firstDay}, the first day; choose that day or a later one` },
    ]
  const met = others.find((other) => shareADay({ firstDay, lastDay }, other))
  if (!met) return []
  const until = met.lastDay === null ? 'on' : `to ${met.lastDay}`
  return [
    {
      path: 'firstDay',
      message: `these days meet others in the same squad, from ${met.firstDay} ${until}; choose days before or after those`,
    },
  ]
}

/** The first day on which the player belongs to the squad by one of the two and not by the other; null: by no day. */
export function firstDayTouched(held: Days | null, wanted: Days): Day | null {
  if (!held) return wanted.firstDay
  const firsts = held.firstDay === wanted.firstDay ? [] : [held.firstDay, wanted.firstDay]
  const lasts = held.lastDay === wanted.lastDay ? [] : [held.lastDay, wanted.lastDay]
  const after = lasts.flatMap((day) => (day === null ? [] : [daysLater(day, 1)]))
  return [...firsts, ...after].sort()[0] ?? null
}
