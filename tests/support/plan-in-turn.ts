import { leansFor } from '#ahead/lean-to'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** The offers of each practice in turn: the first one in the first practice, the second in the second. */
export function choicesInTurn({ practices }: Pick<AheadProblem, 'practices'>): AheadChoices {
  return practices.map(({ offers }, at) => at % offers.length)
}

export function planInTurn(problem: AheadProblem): AheadPlan {
  const choices = choicesInTurn(problem)
  return { choices, leans: leansFor(problem, choices) }
}

/** The same, but that everyone has played an hour more before. */
export function playedBefore(problem: AheadProblem): AheadProblem {
  return {
    ...problem,
    players: problem.players.map((player) => ({
      ...player,
      gapPlayedSeconds: player.gapPlayedSeconds + 3600,
      playedSeconds: player.playedSeconds + 3600,
    })),
  }
}
