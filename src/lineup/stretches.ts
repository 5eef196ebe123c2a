import type { Seconds } from '#common/time'
import { type LineUpProblem, windowSeconds } from '#lineup/problem'

/** Windows of one period, one after another without a hole: from the first to the last, both included. */
export type Stretch = { readonly first: number; readonly last: number; readonly seconds: Seconds }

/** The longest runs of windows inside single periods of which something holds. */
export function stretchesWhere(
  problem: LineUpProblem,
  holds: (window: number) => boolean,
): readonly Stretch[] {
  const stretches: Stretch[] = []
  for (const [index, window] of problem.windows.entries()) {
    if (!holds(index)) continue
    const last = stretches.at(-1)
    if (last && last.last === index - 1 && problem.windows[index - 1]?.period === window.period) {
      stretches[stretches.length - 1] = {
        ...last,
        last: index,
        seconds: last.seconds + windowSeconds(window),
      }
    } else {
      stretches.push({ first: index, last: index, seconds: windowSeconds(window) })
    }
  }
  return stretches
}

/** The window after a stretch; null where its period ends with it. */
export function windowAfter(problem: LineUpProblem, { last }: Stretch): number | null {
  const next = problem.windows[last + 1]
  return next && next.period === problem.windows[last]?.period ? last + 1 : null
}
