import { expectedEnd } from '#ahead/expected-end'
import type { AheadPlan, AheadValue } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { secondsInMinute } from '#common/time'
import { rotationColumns } from '#rotation/problem'

/** A minute beyond the tolerance counts so many times more than one inside it: our own judgement. */
export const outsideWeight = 9

/** What a plan is measured by, in expected minutes; lower is better. */
export function planValue(problem: AheadProblem, plan: AheadPlan): AheadValue {
  const ends = expectedEnd(problem, plan)
  let [balance, short] = [0, 0]
  problem.players.forEach(({ tolerance, themeTolerance }, player) => {
    const end = ends[player]
    if (!end) return
    for (const column of rotationColumns)
      balance += secondsCounted(Math.abs(end.gap[column]), tolerance[column]) / secondsInMinute
    problem.themes.forEach(({ wishedShare }, theme) => {
      const late = (end.themeDue[theme] ?? 0) - (end.themeSeconds[theme] ?? 0)
      if (wishedShare > 0) short += secondsCounted(late, themeTolerance) / secondsInMinute
    })
  })
  return { balance, themes: short, all: balance + short }
}

/** Seconds too few or too many as they count: once up to the tolerance, ten times beyond it; below 0 not at all. */
export function secondsCounted(seconds: number, tolerance: number): number {
  if (seconds <= 0) return 0
  return seconds > tolerance ? seconds + outsideWeight * (seconds - tolerance) : seconds
}
