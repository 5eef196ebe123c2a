import type { ComingPractice } from '#ahead/missing/coming-practice'
import { plannedFor } from '#ahead/missing/forecast-themes'
import { type Day, isoWeekOf } from '#common/time'
import { mondayOf } from '#common/weeks'
import type { Theme, ThemeId } from '#themes/theme'

/** A week with practices to come: how many, and of each theme of the programme how many of them are planned. */
export type ComingWeek = {
  readonly week: string
  readonly firstDay: Day
  readonly practices: number
  readonly planned: ReadonlyMap<ThemeId, number>
}

type Asked = {
  readonly themes: readonly Theme[]
  /** Those of the programme. */
  readonly themeIds: readonly ThemeId[]
  readonly coming: readonly ComingPractice[]
}

export function comingWeeks({ themes, themeIds, coming }: Asked): readonly ComingWeek[] {
  const weeks = [...new Set(coming.map(({ day }) => isoWeekOf(day)))]
  return weeks.map((week) => {
    const own = coming.filter(({ day }) => isoWeekOf(day) === week)
    return {
      week,
      firstDay: mondayOf(week),
      practices: own.length,
      planned: new Map(themeIds.map((themeId) => [themeId, plannedFor(themeId, { themes, coming: own })])),
    }
  })
}
