import { secondsInMinute } from '#common/time'
import { type AheadFrame, entry } from '#solver/ahead-frame'
import type { ThemeColumns } from '#solver/ahead-theme-rows'

/** With so many practices or fewer each offer has its own part in those rows, which says more and takes longer. */
const fewPractices = 6

/**
 * How often a theme is met is a whole number: nobody's shortfall is made up for by a part of a practice. Of what a player
 * may be short at most, one practice makes up all or so many minutes, none makes up nothing, and a straight line between
 * is a row. It changes no plan's value, and lifts the bound.
 */
export function addCounts(frame: AheadFrame, columns: readonly ThemeColumns[]): void {
  const { linear, problem, shapes } = frame
  const isEachCounted = problem.practices.length <= fewPractices
  const mostPlayed = problem.players.map((_, player) => most(frame, player))
  problem.themes.forEach(({ wishedShare }, theme) => {
    if (!(wishedShare > 0)) return
    const picks = shapes.practices.flatMap(({ meetingOf, shapeOf, shapes: own }, practice) =>
      meetingOf.flatMap((meeting, offer) => {
        const column = frame.choices[practice]?.[offer] ?? null
        const there = own[shapeOf[offer] ?? -1]?.there ?? []
        return shapes.meetings[meeting]?.includes(theme) && column !== null ? [{ column, there }] : []
      }),
    )
    if (picks.length === 0) return
    const count = linear.addColumn({ upper: problem.practices.length, isWhole: true })
    linear.addRow({ lower: 0, upper: 0 }, [[count, -1], ...picks.map(({ column }) => [column, 1] as const)])
    problem.players.forEach((player, at) => {
      const own = columns[at]
      const short = own?.short[theme]
      const [, outside] = short ?? []
      if (!own || !short || !outside) return
      const done = (player.themeSeconds[theme] ?? 0) / secondsInMinute
      const once = Math.max(...picks.map(({ there }) => there[at] ?? 0))
      const need = wishedShare * (mostPlayed[at] ?? 0) - done
      for (const [costs, tolerance] of [
        [short, 0],
        [[outside], player.themeTolerance / secondsInMinute],
      ] as const) {
        const all = need - tolerance
        if (all <= 0 || once <= 0) continue
        const full = Math.ceil(all / once - 1e-9) - 1
        const last = all - full * once
        // costs ≥ share × played − done − tolerance − what was made up for
        const row = [...costs, [own.played, -wishedShare] as const]
        if (isEachCounted)
          linear.addRow({ lower: -done - tolerance }, [
            ...row,
            ...picks.flatMap(({ column, there }) => entry(column, Math.min(all, there[at] ?? 0))),
          ])
        if (full > 0 || !isEachCounted)
          linear.addRow({ lower: -done - tolerance - full * (once - last) }, [...row, ...entry(count, last)])
      }
    })
  })
}

/** Most that a player can have played at the end. */
function most({ problem, shapes, choices }: AheadFrame, player: number): number {
  let all = (problem.players[player]?.playedSeconds ?? 0) / secondsInMinute
  let even = 0
  shapes.practices.forEach((own, practice) => {
    let [there, played] = [0, 0]
    choices[practice]?.forEach((column, offer) => {
      const shape = own.shapes[own.shapeOf[offer] ?? -1]
      if (column === null || !shape) return
      played = Math.max(played, shape.plays[player] ?? 0)
      there = Math.max(there, shape.there[player] ?? 0)
    })
    all += there
    even += played
  })
  const { playedSeconds = 0 } = problem.players[player] ?? {}
  return Math.min(all, playedSeconds / secondsInMinute + problem.gentle.most * even)
}
