import { columnLeans } from '#ahead/explain/column-leans'
import { standingBefore } from '#ahead/explain/standing-before'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { Seconds } from '#common/time'
import { type RotationColumn, rotationColumns } from '#rotation/problem'

/** Who gets a bit more of what in a practice, because it is short of it. */
export type Favour = {
  /** Place in the problem's players. */
  readonly player: number
  readonly column: Exclude<RotationColumn, 'rest'>
  /** So much of what it is short of is made up for here, as far as is expected. */
  readonly seconds: Seconds
}

/** Less is lost among the turns of a practice: our own judgement. */
export const leastFavour = 60

/**
 * What a practice of the plan makes up for: of each player every column that it is short of when the practice begins, and
 * gets more of than its even share. Most first.
 */
export function favoursOf(problem: AheadProblem, plan: AheadPlan, practice: number): readonly Favour[] {
  const before = standingBefore(problem, plan, practice)
  return problem.players
    .flatMap((_, player) => {
      const leans = columnLeans(plan.leans[practice]?.[player])
      const gap = before[player]?.gap
      return rotationColumns.flatMap((column): readonly Favour[] => {
        if (column === 'rest' || !gap) return []
        const seconds = Math.min(leans[column], -gap[column])
        return seconds >= leastFavour ? [{ player, column, seconds }] : []
      })
    })
    .sort((one, other) => other.seconds - one.seconds || one.player - other.player)
}
