import type { AheadProblem, AheadTheme, Offer } from '#ahead/problem'
import { themeWithAbove } from '#ahead/theme-with-above'

/** Themes of the blocks that a week lies in. */
export function blockThemes(
  { blocks }: { readonly blocks: AheadProblem['blocks'] },
  week: number,
): readonly number[] {
  return blocks
    .filter(({ firstWeek, lastWeek }) => firstWeek <= week && week <= lastWeek)
    .map(({ theme }) => theme)
}

/** Whether a week is kept for a theme, or for one under it: every practice in it then is one of that theme. */
export function isKeptFor(
  problem: AheadProblem,
  { week, theme }: { readonly week: number; readonly theme: number },
): boolean {
  return blockThemes(problem, week).some((own) => themeWithAbove(problem.themes, own).includes(theme))
}

/** Whether the weeks of the programme and its blocks have room for an offer in a week. */
export function isInItsWeeks(problem: AheadProblem, offer: Offer, week: number): boolean {
  const line = themeWithAbove(problem.themes, offer.theme)
  return (
    line.every((theme) => isInOwnWeeks(problem.themes[theme], week)) &&
    blockThemes(problem, week).every((theme) => line.includes(theme))
  )
}

function isInOwnWeeks(theme: AheadTheme | undefined, week: number): boolean {
  return !theme || ((theme.firstWeek ?? week) <= week && week <= (theme.lastWeek ?? week))
}
