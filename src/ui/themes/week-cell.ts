import type { WeekOfTheme } from '#themes/coverage'
import type { GridCell } from '#ui/charts/theme-grid'
import { minutesText } from '#ui/figures/minutes'
import { words } from '#ui/words'

export type PractisedWeek = {
  readonly week: string
  readonly firstDay: string
  /** Practices of the week that are written down, and those held. */
  readonly written: number
  readonly held: number
}

/** What stands where a theme and a week meet. `cell` null: the theme is neither planned nor met in the term. */
export function weekCell(
  { week, written, held }: PractisedWeek,
  { cell, isPlanned }: { readonly cell: WeekOfTheme | undefined; readonly isPlanned: boolean },
): GridCell {
  if (cell && cell.metPractices > 0)
    return {
      key: week,
      mark: 'met',
      text: `${cell.metPractices}×`,
      words: `met in ${words.practices(cell.metPractices)}, ${minutesText(cell.seconds)} of all players together`,
    }
  if (written < held)
    return {
      key: week,
      mark: 'unknown',
      text: '',
      words: `${words.practices(held - written)} not written down`,
    }
  if (written > 0 && isPlanned && cell && cell.metSoFar < cell.dueSoFar)
    return {
      key: week,
      mark: 'hole',
      text: '',
      words: `not met; by then ${cell.dueSoFar} due and ${cell.metSoFar} met`,
    }
  return { key: week, mark: 'none', text: '', words: written > 0 ? 'not met' : 'no practice' }
}
