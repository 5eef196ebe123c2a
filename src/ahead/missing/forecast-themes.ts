import type { ComingPractice } from '#ahead/missing/coming-practice'
import type { ProgrammeCoverage } from '#themes/coverage'
import { practicesDue } from '#themes/practices-due'
import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'
import { themeAndAbove } from '#themes/theme-tree'

/** A theme of the programme in practices: so far, still planned, and how the term is likely to end. */
export type ThemeForecast = {
  readonly themeId: ThemeId
  readonly met: number
  readonly due: number
  /** Of those to come, with it or a theme under it. */
  readonly planned: number
  /** When practices without a planned theme go as so far; a part of one may be expected. */
  readonly atEnd: number
  readonly dueAtEnd: number
}

export type ProgrammeForecast = {
  readonly coming: number
  /** Of those to come, without a planned theme. */
  readonly open: number
  /** Only what the programme wishes for, in its order. */
  readonly themes: readonly ThemeForecast[]
}

/** The programme against the record, carried on to the end of the term. */
export function forecastThemes({
  themes,
  programme,
  cover,
  coming,
}: {
  readonly themes: readonly Theme[]
  readonly programme: readonly ProgrammeEntry[]
  readonly cover: Pick<ProgrammeCoverage, 'practicesByWeek' | 'themes'>
  readonly coming: readonly ComingPractice[]
}): ProgrammeForecast {
  const written = cover.practicesByWeek.reduce((sum, count) => sum + count, 0)
  const dueAtEnd = practicesDue(programme, written + coming.length)
  const open = coming.filter(({ themeId }) => themeId === null).length
  const wished = programme.filter(({ wishedShare }) => wishedShare > 0)
  return {
    coming: coming.length,
    open,
    themes: wished.map(({ themeId }) => {
      const covered = cover.themes.find((own) => own.themeId === themeId)
      const met = covered?.metPractices ?? 0
      const planned = plannedFor(themeId, { themes, coming })
      const asSoFar = written > 0 ? (open * met) / written : 0
      return {
        themeId,
        met,
        due: covered?.duePractices ?? 0,
        planned,
        atEnd: met + planned + asSoFar,
        dueAtEnd: dueAtEnd.get(themeId) ?? 0,
      }
    }),
  }
}

/** Practices with the theme or one under it. */
export function plannedFor(
  themeId: ThemeId,
  { themes, coming }: { readonly themes: readonly Theme[]; readonly coming: readonly ComingPractice[] },
): number {
  return coming.filter((own) => own.themeId !== null && themeAndAbove(themes, own.themeId).includes(themeId))
    .length
}
