import type { Day, Seconds } from '#common/time'
import { type Role, roles } from '#exposure/column'
import { type SessionKind, type StandingInput, standingsAfterEach } from '#fairness/standing'
import { dueGapSeconds } from '#fairness/standing-figure'
import { toleranceSeconds } from '#fairness/tolerance'
import type { PlayerId } from '#squad/player'
import type { Policy } from '#squad/policy'

/** Where a player stood in a role after a session it belonged to, there or away. */
export type RunningGap = {
  readonly day: Day
  readonly gapSeconds: number
  readonly toleranceSeconds: Seconds
}

type RunningGapsOf = { readonly playerId: PlayerId; readonly kind: SessionKind; readonly policy: Policy }

/** The running differences of a player, one series for each role, all of the same length. `input.accounts` of one kind. */
export function runningGaps(
  input: StandingInput,
  { playerId, kind, policy }: RunningGapsOf,
): readonly { readonly role: Role; readonly points: readonly RunningGap[] }[] {
  const series = roles.map((role) => ({ role, points: [] as RunningGap[] }))
  for (const { account, standings } of standingsAfterEach(input)) {
    const standing = standings.get(playerId)?.[kind]
    if (!standing || !account.presences.some((one) => one.playerId === playerId)) continue
    for (const { role, points } of series) {
      const figure = standing.roles[role]
      points.push({
        day: account.day,
        gapSeconds: dueGapSeconds(figure),
        toleranceSeconds: toleranceSeconds(policy, figure.dueSeconds),
      })
    }
  }
  return series
}
