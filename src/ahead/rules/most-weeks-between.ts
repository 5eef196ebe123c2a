import { isInItsWeeks } from '#ahead/kept-weeks'
import type { AheadProblem } from '#ahead/problem'
import { type AheadRule, noLimits, type Pick } from '#ahead/rule'
import { choiceMeets, didMeet, offerMeets, picksOf, picksWhere } from '#ahead/themes-met'

/**
 * Once met, a theme comes back so many weeks later at the latest. That is asked only where the practices to come reach
 * that far, and where one of them in between could be of it: its weeks and the blocks have room, and a design serves it.
 */
export const mostWeeksBetween: AheadRule = {
  name: 'mostWeeksBetween',
  faults: (problem, choices) =>
    recurringThemes(problem).flatMap((own) => {
      const { theme } = own
      const comesBack = (picks: readonly Pick[]) =>
        picks.some(({ practice, offer }) => choices[practice] === offer)
      const metBefore = dueBack(problem, { ...own, from: null })
      const ofRecord =
        metBefore && !comesBack(metBefore)
          ? [{ rule: 'mostWeeksBetween' as const, practice: metBefore.at(-1)?.practice ?? 0, theme }]
          : []
      const ofPlan = problem.practices.flatMap((_, practice) => {
        if (!choiceMeets(problem, choices, { practice, theme })) return []
        const due = dueBack(problem, { ...own, from: practice })
        return due && !comesBack(due) ? [{ rule: 'mostWeeksBetween' as const, practice, theme }] : []
      })
      return [...ofRecord, ...ofPlan]
    }),
  limits: (problem) => {
    const needs: { readonly pick: Pick; readonly oneOf: readonly Pick[] }[] = []
    const atLeastOne: (readonly Pick[])[] = []
    for (const own of recurringThemes(problem)) {
      const metBefore = dueBack(problem, { ...own, from: null })
      if (metBefore) atLeastOne.push(metBefore)
      problem.practices.forEach((_, practice) => {
        const oneOf = dueBack(problem, { ...own, from: practice })
        if (oneOf)
          for (const pick of picksOf(problem, { practice, theme: own.theme })) needs.push({ pick, oneOf })
      })
    }
    return { ...noLimits, needs, atLeastOne }
  },
}

type Recurring = { readonly theme: number; readonly weeks: number }

function recurringThemes({ themes }: AheadProblem): readonly Recurring[] {
  return themes.flatMap(({ mostWeeksBetween: weeks }, theme) => (weeks !== null ? [{ theme, weeks }] : []))
}

/**
 * The offers of which one has to be chosen when a theme is met in a practice, or was last met in the record (`from`
 * null); null: nothing is asked.
 */
function dueBack(
  problem: AheadProblem,
  { theme, weeks, from }: Recurring & { readonly from: number | null },
): readonly Pick[] | null {
  const week =
    from === null
      ? problem.met.findLast((met) => didMeet(problem, met, theme))?.week
      : problem.practices[from]?.week
  const lastPlanned = problem.practices.at(-1)?.week
  if (week === undefined || lastPlanned === undefined || week + weeks > lastPlanned) return null
  const inTime = problem.practices.flatMap((practice, index) =>
    index > (from ?? -1) && practice.week <= week + weeks
      ? picksWhere(
          problem,
          index,
          (offer) => offerMeets(problem, offer, theme) && isInItsWeeks(problem, offer, practice.week),
        )
      : [],
  )
  return inTime.length > 0 ? inTime : null
}
