import type { Problem } from '#common/problem'
import type { PlanRequest } from '#planning/practice-plan'
import { under } from '#practice/design-faults'
import { practiceLimits, sizeFaults } from '#practice/practice-size'
import { gapIsATime, hasTurns, turnsHaveLength } from '#practice/round-faults'

/**
 * What of a request is larger than a plan can be, each with its place and what would be right: `rounds`,
 * `rounds.2.turnCount`, `players`. A design in order can be made too large by changes for the day.
 */
export function requestSizeFaults({
  design,
  players,
}: Pick<PlanRequest, 'design' | 'players'>): readonly Problem[] {
  const tooMany = players.length - practiceLimits.players
  return [
    ...sizeFaults(design.rounds),
    ...design.rounds.flatMap((round, index) =>
      under(`rounds.${index}`, [...hasTurns(round), ...turnsHaveLength(round), ...gapIsATime(round)]),
    ),
    ...(tooMany > 0
      ? [
          {
            path: 'players',
            message: `are ${players.length}, and a plan takes ${practiceLimits.players} at most; untick ${tooMany} of them`,
          },
        ]
      : []),
  ]
}
