import { expectedEnd } from '#ahead/expected-end'
import type { AheadPlan, AheadValue, ExpectedEnd } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { secondsInMinute } from '#common/time'
import { rotationColumns } from '#rotation/problem'

/** A minute beyond the tolerance counts so many times more than one inside it: our own judgement. */
export const outsideWeight = 9

/** What a plan is measured by, in expected minutes; lower is better. */
export function planValue(problem: AheadProblem, plan: AheadPlan): AheadValue {
  return valueOfEnds(problem, expectedEnd(problem, plan))
}

/** The same from ends that are known. */
export function valueOfEnds(
  { players, themes }: Pick<AheadProblem, 'players' | 'themes'>,
  ends: readonly ExpectedEnd[],
): AheadValue {
  let [balance, short] = [0, 0]
  players.forEach((player, index) => {
    const end = ends[index]
    if (!end) return
    for (const column of rotationColumns) balance += cost(Math.abs(end.gap[column]), player.tolerance[column])
    themes.forEach(({ wishedShare }, theme) => {
      if (wishedShare > 0)
        short += cost((end.themeDue[theme] ?? 0) - (end.themeSeconds[theme] ?? 0), player.themeTolerance)
    })
  })
  return { balance, themes: short, all: balance + short }
}

/** Minutes for so many seconds too few or too many: once up to the tolerance, ten times beyond it. */
function cost(seconds: number, tolerance: number): number {
  const off = Math.max(0, seconds)
  return (off + outsideWeight * Math.max(0, off - tolerance)) / secondsInMinute
}
