import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import type { Line } from '#match/match'

/** What is left of a problem from a window on, after a plan was played up to it: who stands where, since when. */
export function laterLineUp(problem: LineUpProblem, plan: LineUpPlan, from: number): LineUpProblem {
  const { windows } = problem
  const isInside = windows[from]?.period === windows[from - 1]?.period
  return {
    ...problem,
    windows: windows.slice(from),
    fixed: [],
    hasStart: false,
    players: problem.players.map((own, player) => {
      const places: readonly (Line | null)[] = plan[player] ?? []
      const before = places.slice(0, from)
      const line = before.at(-1) ?? null
      let seconds = 0
      for (let at = from - 1; isInside && at >= 0; at -= 1) {
        const window = windows[at]
        if (!window || window.period !== windows[from]?.period || Boolean(places[at]) !== Boolean(line)) break
        seconds += window.end - window.start
      }
      const kept = new Set(
        windows
          .slice(0, from)
          .flatMap(({ period }, at) =>
            places[at] === 'keeper' && (period !== windows[from]?.period || line !== 'keeper')
              ? [period]
              : [],
          ),
      )
      const played = windows
        .slice(0, from)
        .reduce((sum, { start, end }, at) => (places[at] ? sum + end - start : sum), 0)
      return {
        ...own,
        isThere: own.isThere.slice(from),
        leastSeconds: Math.max(0, own.leastSeconds - played),
        mostSeconds: own.mostSeconds === null ? null : Math.max(0, own.mostSeconds - played),
        running: {
          line,
          seconds,
          hasComeOff: before.some(
            (place, at) => place !== null && at + 1 <= from - 1 && before[at + 1] === null,
          ),
          periodsKept: kept.size,
        },
      }
    }),
  }
}
