import type { Seconds } from '#common/time'
import type { LineUpWindow } from '#lineup/problem'

/** Periods end to end in playing time, cut at the marks inside them; marks count from the start of their period. */
export function windowsOfPeriods(
  periodSeconds: readonly Seconds[],
  marks: readonly (readonly Seconds[])[],
): readonly Omit<LineUpWindow, 'places'>[] {
  let start = 0
  return periodSeconds.flatMap((seconds, period) => {
    const begin = start
    start += seconds
    const inside = [...new Set(marks[period])].filter((mark) => 0 < mark && mark < seconds)
    const edges = [0, ...inside.sort((one, other) => one - other), seconds]
    return edges.slice(1).map((end, index) => ({
      period,
      start: begin + (edges[index] ?? 0),
      end: begin + end,
    }))
  })
}
