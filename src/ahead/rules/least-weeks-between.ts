import { isKeptFor } from '#ahead/kept-weeks'
import type { AheadProblem } from '#ahead/problem'
import { type AheadRule, noLimits, type Pick } from '#ahead/rule'
import { choiceMeets, didMeet, picksOf } from '#ahead/themes-met'

/**
 * A theme comes back after so many weeks at the earliest, in the same week not at all. In weeks that are kept for it, or
 * for a theme under it, a practice is never too soon: there it is asked for.
 */
export const leastWeeksBetween: AheadRule = {
  name: 'leastWeeksBetween',
  faults: (problem, choices) =>
    spacedThemes(problem).flatMap(({ theme, weeks }) =>
      problem.practices.flatMap(({ week }, practice) => {
        if (!choiceMeets(problem, choices, { practice, theme })) return []
        const isTooSoon = problem.practices.some(
          (earlier, index) =>
            index < practice &&
            week - earlier.week < weeks &&
            choiceMeets(problem, choices, { practice: index, theme }),
        )
        const isRefused =
          !isKeptFor(problem, { week, theme }) && (isTooSoon || wasMetSince(problem, { theme, week, weeks }))
        return isRefused ? [{ rule: 'leastWeeksBetween' as const, practice, theme }] : []
      }),
    ),
  limits: (problem) => {
    const never: Pick[] = []
    const atMostOne: (readonly Pick[])[] = []
    for (const { theme, weeks } of spacedThemes(problem)) {
      const picks = problem.practices.map((_, practice) => picksOf(problem, { practice, theme }))
      const isFree = problem.practices.map(({ week }) => isKeptFor(problem, { week, theme }))
      problem.practices.forEach(({ week }, practice) => {
        if (!isFree[practice] && wasMetSince(problem, { theme, week, weeks }))
          never.push(...(picks[practice] ?? []))
        const near = problem.practices.flatMap((later, index) =>
          index > practice && !isFree[index] && later.week - week < weeks && picks[index]?.length
            ? [index]
            : [],
        )
        if (picks[practice]?.length && near.length > 0)
          atMostOne.push([practice, ...near].flatMap((index) => picks[index] ?? []))
      })
    }
    return { ...noLimits, never, atMostOne }
  },
}

function spacedThemes({
  themes,
}: AheadProblem): readonly { readonly theme: number; readonly weeks: number }[] {
  return themes.flatMap(({ leastWeeksBetween: weeks }, theme) =>
    weeks !== null && weeks > 1 ? [{ theme, weeks }] : [],
  )
}

function wasMetSince(
  problem: AheadProblem,
  { theme, week, weeks }: { readonly theme: number; readonly week: number; readonly weeks: number },
): boolean {
  return problem.met.some((met) => week - met.week < weeks && didMeet(problem, met, theme))
}
