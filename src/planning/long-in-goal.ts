import { roles } from '#exposure/column'
import type { PlannedBalance } from '#planning/plan-balance'
import type { PlayerId } from '#squad/player'

/** Somebody who is in goal for so many of its turns. */
export type LongInGoal = { readonly playerId: PlayerId; readonly turns: number; readonly of: number }

/** Who is in goal for more than this part (of 1) of its time in a practice: nobody is due that, however far behind in it. */
export function longInGoal(balances: readonly PlannedBalance[], limit: number): readonly LongInGoal[] {
  return balances.flatMap(({ playerId, roles: own }) => {
    const sum = (of: 'seconds' | 'turns') => roles.reduce((all, role) => all + own[role][of], 0)
    const seconds = sum('seconds')
    if (seconds === 0 || own.keep.seconds <= limit * seconds) return []
    return [{ playerId, turns: own.keep.turns, of: sum('turns') }]
  })
}
