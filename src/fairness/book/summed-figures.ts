import type { Column, Role, Situation } from '#exposure/column'
import { addFigures, noFigure, type StandingFigure } from '#fairness/standing-figure'
import type { ThemeId } from '#themes/theme'

/** Figures of one player by every way of reading them, as a standing has them. */
export type SummedFigures = {
  readonly roles: Readonly<Record<Role, StandingFigure>>
  readonly situations: Readonly<Record<Situation, StandingFigure>>
  readonly themes: ReadonlyMap<ThemeId, StandingFigure>
}

/** Sums by column put together: situations and themes are parts of playing, not of waiting. */
export function summedFigures(columns: readonly (Column & StandingFigure)[]): SummedFigures {
  const roles = { attack: noFigure, defend: noFigure, keep: noFigure, rest: noFigure }
  const situations = { outnumbering: noFigure, level: noFigure, outnumbered: noFigure }
  const themes = new Map<ThemeId, StandingFigure>()
  for (const column of columns) {
    const { role, situation, themeId } = column
    roles[role] = addFigures(roles[role], column)
    if (situation) situations[situation] = addFigures(situations[situation], column)
    if (themeId !== null && role !== 'rest')
      themes.set(themeId, addFigures(themes.get(themeId) ?? noFigure, column))
  }
  return { roles, situations, themes }
}
