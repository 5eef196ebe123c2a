import type { LineUpProblem } from '#lineup/problem'

/** A tiny squad in the middle of its first period: one has kept goal for two minutes, one has played, two have not. */
export function laterTiny(problem: LineUpProblem): LineUpProblem {
  const stands = [
    { line: 'keeper' as const, hasComeOff: false },
    { line: 'back' as const, hasComeOff: false },
    { line: null, hasComeOff: true },
    { line: null, hasComeOff: false },
  ]
  return {
    ...problem,
    hasStart: false,
    players: problem.players.map((own, player) => ({
      ...own,
      running: { seconds: 120, periodsKept: 0, ...(stands[player] ?? { line: null, hasComeOff: false }) },
    })),
  }
}
