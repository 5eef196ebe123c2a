import type { DesignRound } from '#practice/design'

/** The round of a design that could give most turns in attack and defence; null when no round has both. */
export function longestRound(rounds: readonly DesignRound[]): DesignRound | null {
  return rounds
    .filter((round) => round.stations.some(({ attack, defend }) => attack > 0 && defend > 0))
    .reduce<DesignRound | null>(
      (best, round) => (best && best.turnCount >= round.turnCount ? best : round),
      null,
    )
}
