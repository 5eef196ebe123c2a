import type { LineUpProblem } from '#lineup/problem'

/** Whether the first window goes on with a period that has begun: somebody has stood in it unchanged for some time. */
export function isPeriodRunning(problem: LineUpProblem): boolean {
  return !problem.hasStart && problem.players.some(({ running }) => running.seconds > 0)
}
