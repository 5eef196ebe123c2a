import { hasDay } from '#common/dated'
import { type Day, isoWeekOf } from '#common/time'
import { isoWeeksBetween } from '#common/weeks'
import type { Term } from '#squad/squad'
import { practicesDue } from '#themes/practices-due'
import type { ProgrammeEntry, Theme, ThemeId } from '#themes/theme'
import { themeAndAbove } from '#themes/theme-tree'

/** A written practice and the themes its turns carried. */
export type ThemedPractice = {
  readonly sessionId: string
  readonly day: Day
  readonly themes: readonly { readonly themeId: ThemeId; readonly seconds: number }[]
}

export type WeekOfTheme = {
  /** ISO week, e.g. `2026-W53`. */
  readonly week: string
  /** Practices of the week with a turn of it, and its time in them. */
  readonly metPractices: number
  readonly seconds: number
  /** From the first day of the term to the end of the week. */
  readonly metSoFar: number
  readonly dueSoFar: number
}

export type ThemeCoverage = {
  readonly themeId: ThemeId
  /** 0 for a theme that was met without being in the programme. */
  readonly wishedShare: number
  readonly weeks: readonly WeekOfTheme[]
  readonly metPractices: number
  readonly duePractices: number
  readonly seconds: number
}

export type ProgrammeCoverage = {
  readonly weeks: readonly string[]
  readonly practicesByWeek: readonly number[]
  /** The programme in its order, then what was met beside it. */
  readonly themes: readonly ThemeCoverage[]
  /** Themes of the programme that had as many practices as were due, of those with any due. */
  readonly onCourse: { readonly themes: number; readonly of: number }
}

/** The programme of a term against the weeks: what was due so far and what was met. Themes count for those they stand under. */
export function coverProgramme(input: {
  readonly themes: readonly Theme[]
  readonly programme: readonly ProgrammeEntry[]
  readonly term: Pick<Term, 'firstDay' | 'lastDay'>
  /** Of any days; those outside the term are passed over. */
  readonly practices: readonly ThemedPractice[]
}): ProgrammeCoverage {
  const { term } = input
  const weeks = isoWeeksBetween(term)
  const practices = input.practices
    .filter((practice) => hasDay(term, practice.day))
    .map((practice) => ({ week: isoWeekOf(practice.day), seconds: secondsByTheme(practice, input.themes) }))
  const practicesByWeek = weeks.map((week) => practices.filter((practice) => practice.week === week).length)
  const dueByWeek = runningSums(practicesByWeek).map((soFar) => practicesDue(input.programme, soFar))
  const wished = new Map(input.programme.map((entry) => [entry.themeId, entry.wishedShare]))
  const met = practices.flatMap((practice) => [...practice.seconds.keys()])
  const themes = [...new Set([...wished.keys(), ...met])].map((themeId) => {
    const cells = weeks.map((week) => {
      const inWeek = practices.filter((practice) => practice.week === week && practice.seconds.has(themeId))
      return {
        week,
        metPractices: inWeek.length,
        seconds: sum(inWeek.map((p) => p.seconds.get(themeId) ?? 0)),
      }
    })
    const metSoFar = runningSums(cells.map((cell) => cell.metPractices))
    const full = cells.map((cell, index) => ({
      ...cell,
      metSoFar: metSoFar[index] as number,
      dueSoFar: dueByWeek[index]?.get(themeId) ?? 0,
    }))
    return {
      themeId,
      wishedShare: wished.get(themeId) ?? 0,
      weeks: full,
      metPractices: full.at(-1)?.metSoFar ?? 0,
      duePractices: full.at(-1)?.dueSoFar ?? 0,
      seconds: sum(cells.map((cell) => cell.seconds)),
    }
  })
  const due = themes.filter((theme) => theme.duePractices > 0)
  const onCourse = { themes: due.filter((t) => t.metPractices >= t.duePractices).length, of: due.length }
  return { weeks, practicesByWeek, themes, onCourse }
}

function secondsByTheme(practice: ThemedPractice, themes: readonly Theme[]): ReadonlyMap<ThemeId, number> {
  const seconds = new Map<ThemeId, number>()
  for (const met of practice.themes) {
    for (const themeId of themeAndAbove(themes, met.themeId)) {
      seconds.set(themeId, (seconds.get(themeId) ?? 0) + met.seconds)
    }
  }
  return seconds
}

function runningSums(counts: readonly number[]): readonly number[] {
  let soFar = 0
  return counts.map((count) => {
    soFar += count
    return soFar
  })
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0)
