import { chosenOffer } from '#ahead/plan'
import type { AheadProblem, Offer } from '#ahead/problem'
import { type AheadRule, noLimits, type Pick } from '#ahead/rule'
import { themeWithAbove } from '#ahead/theme-with-above'
import { choiceMeets, didMeet, picksOf } from '#ahead/themes-met'

/** A theme that builds on another does not come before that one was met in an earlier practice. */
export const after: AheadRule = {
  name: 'after',
  faults: (problem, choices) =>
    problem.practices.flatMap((_, practice) => {
      const offer = chosenOffer(problem, choices, practice)
      if (!offer) return []
      return stillToMeet(problem, offer)
        .filter(
          ({ before }) =>
            !problem.practices.some(
              (_, earlier) =>
                earlier < practice && choiceMeets(problem, choices, { practice: earlier, theme: before }),
            ),
        )
        .map(({ theme }) => ({ rule: 'after' as const, practice, theme }))
    }),
  limits: (problem) => {
    const never: Pick[] = []
    const needs: { readonly pick: Pick; readonly oneOf: readonly Pick[] }[] = []
    problem.practices.forEach(({ offers }, practice) => {
      const earlier = new Map<number, readonly Pick[]>()
      offers.forEach((own, offer) => {
        for (const { before } of stillToMeet(problem, own)) {
          const oneOf = earlier.get(before) ?? earlierPicks(problem, { practice, theme: before })
          earlier.set(before, oneOf)
          if (oneOf.length === 0) never.push({ practice, offer })
          else needs.push({ pick: { practice, offer }, oneOf })
        }
      })
    })
    return { ...noLimits, never, needs }
  },
}

function earlierPicks(
  problem: AheadProblem,
  { practice, theme }: { readonly practice: number; readonly theme: number },
): readonly Pick[] {
  return problem.practices
    .slice(0, practice)
    .flatMap((_, earlier) => picksOf(problem, { practice: earlier, theme }))
}

/** Of an offer's themes those that build on one which was not met yet when the first practice begins. */
function stillToMeet(
  problem: AheadProblem,
  offer: Offer,
): readonly { readonly theme: number; readonly before: number }[] {
  return themeWithAbove(problem.themes, offer.theme).flatMap((theme) => {
    const before = problem.themes[theme]?.after ?? null
    if (before === null || problem.met.some((met) => didMeet(problem, met, before))) return []
    return [{ theme, before }]
  })
}
