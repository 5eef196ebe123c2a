import { isPeriodRunning } from '#lineup/period-running'
import type { LineUpProblem } from '#lineup/problem'

/** By window: whether anybody can go into goal who was not there, where keepers stay for whole periods. */
export function goalOpens(problem: LineUpProblem): readonly boolean[] {
  const { windows, players, rules } = problem
  return windows.map((window, index) => {
    const before = windows[index - 1]
    if (!rules.keeperForPeriod) return true
    if (!before) return !isPeriodRunning(problem) || mayLeave(problem)
    if (before.period !== window.period || before.places.keeper !== window.places.keeper) return true
    return players.some(({ keeps, isThere }) => keeps && isThere[index - 1] && !isThere[index])
  })
}

/** Whether the goal of a period that is running may be empty, or has as many in it as it needs. */
function mayLeave({ players, windows }: LineUpProblem): boolean {
  const staying = players.filter(({ running, isThere }) => running.line === 'keeper' && isThere[0]).length
  return staying < (windows[0]?.places.keeper ?? 0)
}
