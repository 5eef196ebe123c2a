import type { Problem } from '#common/problem'
import type { DesignRound } from '#practice/design'

/**
 * More than any practice has; what is larger is a mistake, or meant to be a burden. A design, a plan of it and what is
 * typed in afterwards keep to the same. Our own judgement, no source.
 */
export const practiceLimits = {
  players: 60,
  rounds: 12,
  /** Of one round. */
  turnCount: 60,
  /** Of all rounds together. */
  turns: 200,
  turnSeconds: 7200,
  gapSeconds: 1800,
  areas: 9,
  /** Of one role in one area. */
  places: 30,
} as const

/** What of some rounds is larger than a practice can be, however each of them is by itself. */
export function sizeFaults(
  rounds: readonly Pick<DesignRound, 'turnCount' | 'stations'>[],
): readonly Problem[] {
  const { rounds: mostRounds, turns: mostTurns, areas } = practiceLimits
  const turns = rounds.reduce((sum, { turnCount }) => sum + Math.max(0, turnCount), 0)
  const faults: Problem[] = []
  if (rounds.length > mostRounds)
    faults.push({
      path: 'rounds',
      message: `are ${rounds.length}, and a practice has ${mostRounds} at most; leave some out, or make one of two that are alike`,
    })
  if (turns > mostTurns)
    faults.push({
      path: 'rounds',
      message: `have ${turns} turns together, and a practice has ${mostTurns} at most; give the longest round fewer`,
    })
  rounds.forEach(({ stations }, index) => {
    if (stations.length > areas)
      faults.push({
        path: `rounds.${index}.stations`,
        message: `are ${stations.length}, and a round has ${areas} at most; take some out`,
      })
  })
  return faults
}
