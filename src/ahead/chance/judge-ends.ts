import { isColumnInside, isThemeInside, secondsBeyond } from '#ahead/chance/is-inside'
import { columnCount, type Standing } from '#ahead/chance/standing'
import { playerColumns } from '#ahead/player-columns'
import type { AheadProblem } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'

/** What is judged of a player, one after the other: all, seats, themes, each column, each theme. */
export const firstColumnJudged = 3
export const firstThemeJudged = firstColumnJudged + columnCount

export type EndJudge = {
  /** By player: 1 inside, 0 outside, for everything that is judged of it. The list is written anew by each call. */
  readonly inside: (end: Standing) => Uint8Array
  readonly judgedCount: number
}

/** Says of everyone's end what of it is inside the tolerance. */
export function endJudge({ players, themes }: Pick<AheadProblem, 'players' | 'themes'>): EndJudge {
  const judgedCount = firstThemeJudged + themes.length
  const marks = new Uint8Array(players.length * judgedCount)
  const tolerances = playerColumns(players, 'tolerance')
  const inside = (end: Standing) => {
    players.forEach(({ themeTolerance }, player) => {
      const first = player * judgedCount
      let [seats, inThemes] = [1, 1]
      rotationColumns.forEach((column, place) => {
        const at = player * columnCount + place
        const [gap, tolerance] = [end.gap[at] ?? 0, tolerances[at] ?? 0]
        const is = isColumnInside(column, { gap, tolerance }) ? 1 : 0
        marks[first + firstColumnJudged + place] = is
        seats &= is
      })
      themes.forEach(({ wishedShare }, theme) => {
        const due = wishedShare * (end.played[player] ?? 0)
        const seconds = end.themes[player * themes.length + theme] ?? 0
        const is = isThemeInside({ due, seconds, tolerance: themeTolerance }) ? 1 : 0
        marks[first + firstThemeJudged + theme] = is
        inThemes &= is
      })
      marks[first] = seats & inThemes
      marks[first + 1] = seats
      marks[first + 2] = inThemes
    })
    return marks
  }
  return { inside, judgedCount }
}

/** Seconds outside the tolerance, over everyone and everything that is judged. */
export function secondsOutside(
  { players, themes }: Pick<AheadProblem, 'players' | 'themes'>,
  end: Standing,
): number {
  let all = 0
  players.forEach(({ tolerance, themeTolerance }, player) => {
    rotationColumns.forEach((column, place) => {
      const gap = end.gap[player * columnCount + place] ?? 0
      all += secondsBeyond(column, { gap, tolerance: tolerance[column] })
    })
    themes.forEach(({ wishedShare }, theme) => {
      const due = wishedShare * (end.played[player] ?? 0)
      all += Math.max(0, due - (end.themes[player * themes.length + theme] ?? 0) - themeTolerance)
    })
  })
  return all
}
