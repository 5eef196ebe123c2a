import { secondsInMinute } from '#common/time'
import { type AheadFrame, entry } from '#solver/ahead-frame'
import type { ThemeColumns } from '#solver/ahead-theme-rows'

/**
 * How often a theme is met is a whole number: nobody's shortfall is made up for by a part of a practice. Of what a player
 * may be short at most, one practice makes up all or so many minutes, none makes up nothing, and a straight line between
 * is a row. It changes no plan's value, and lifts the bound.
 */
export function addCounts(frame: AheadFrame, columns: readonly ThemeColumns[]): void {
  const { linear, problem, shapes } = frame
  const mostPlayed = problem.players.map((_, player) => most(frame, player))
  problem.themes.forEach(({ wishedShare }, theme) => {
    if (!(wishedShare > 0)) return
    const picks = shapes.practices.flatMap(({ meetingOf }, practice) =>
      meetingOf.flatMap((meeting, offer) => {
        const column = frame.choices[practice]?.[offer] ?? null
        return shapes.meetings[meeting]?.includes(theme) && column !== null ? [column] : []
      }),
    )
    if (picks.length === 0) return
    const count = linear.addColumn({ upper: problem.practices.length, isWhole: true })
    linear.addRow({ lower: 0, upper: 0 }, [[count, -1], ...picks.map((column) => [column, 1] as const)])
    problem.players.forEach((player, at) => {
      const own = columns[at]
      const short = own?.short[theme]
      const [, outside] = short ?? []
      if (!own || !short || !outside) return
      const done = (player.themeSeconds[theme] ?? 0) / secondsInMinute
      const once = mostOnce(frame, at, theme)
      const need = wishedShare * (mostPlayed[at] ?? 0) - done
      for (const [costs, tolerance] of [
        [short, 0],
        [[outside], player.themeTolerance / secondsInMinute],
      ] as const) {
        const all = need - tolerance
        if (all <= 0 || once <= 0) continue
        const full = Math.ceil(all / once - 1e-9) - 1
        const last = all - full * once
        // costs ≥ share × played − done − tolerance − (full × once + last × (count − full))
        linear.addRow({ lower: -done - tolerance - full * (once - last) }, [
          ...costs,
          [own.played, -wishedShare],
          ...entry(count, last),
        ])
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

/** Most that a player can play in one practice of a theme. */
function mostOnce({ shapes, choices }: AheadFrame, player: number, theme: number): number {
  let all = 0
  shapes.practices.forEach((own, practice) => {
    own.meetingOf.forEach((meeting, offer) => {
      const shape = own.shapes[own.shapeOf[offer] ?? -1]
      const isOf = shapes.meetings[meeting]?.includes(theme) ?? false
      if (!shape || !isOf || choices[practice]?.[offer] == null) return
      all = Math.max(all, shape.there[player] ?? 0)
    })
  })
  return all
}
