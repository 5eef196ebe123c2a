import { type Dated, hasDay } from '#common/dated'
import type { Day } from '#common/time'
import type { AccountLine } from '#fairness/account'
import type { PlayerId } from '#squad/player'

/** Fewer or shorter turns agreed with a player and its family; no reason is stored. */
export type AgreedFewerTurns = Dated & {
  readonly playerId: PlayerId
  /** Part of its even share of playing that stays due, 0-1. */
  readonly dueShare: number
}

/** Part of a player's even share of playing that is due on a day; the lowest agreement counts, 1 without any. */
export function agreedShareOn(
  agreements: readonly AgreedFewerTurns[],
  at: { readonly playerId: PlayerId; readonly day: Day },
): number {
  return agreements
    .filter((a) => a.playerId === at.playerId && hasDay(a, at.day))
    .reduce((lowest, a) => Math.min(lowest, a.dueShare), 1)
}

/**
 * What is due in one row after an agreement. Playing falls to the agreed part; what it gives up becomes waiting that is
 * due, so that the dues of a player still add up to its time and waiting by agreement is never held against anyone.
 */
export function agreedDue(
  line: Pick<AccountLine, 'role' | 'fairSeconds' | 'fairTurns'>,
  agreedShare: number,
): {
  readonly dueSeconds: number
  readonly dueTurns: number
  readonly waitSeconds: number
  readonly waitTurns: number
} {
  if (line.role === 'rest' || agreedShare === 1) {
    return { dueSeconds: line.fairSeconds, dueTurns: line.fairTurns, waitSeconds: 0, waitTurns: 0 }
  }
  const dueSeconds = line.fairSeconds * agreedShare
  const dueTurns = line.fairTurns * agreedShare
  return {
    dueSeconds,
    dueTurns,
    waitSeconds: line.fairSeconds - dueSeconds,
    waitTurns: line.fairTurns - dueTurns,
  }
}
