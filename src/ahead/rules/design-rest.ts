import { chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { type AheadRule, noLimits, type Pick } from '#ahead/rule'
import { picksWhere } from '#ahead/themes-met'

/** A design is not chosen again in so many practices after it, those of the record included: variety. */
export const designRest: AheadRule = {
  name: 'designRest',
  faults: (problem, choices) =>
    problem.practices.flatMap((_, practice) => {
      const design = chosenOffer(problem, choices, practice)?.design ?? null
      if (design === null) return []
      const isAgain = problem.practices.some(
        (_, earlier) =>
          earlier < practice &&
          practice - earlier <= problem.designRest &&
          chosenOffer(problem, choices, earlier)?.design === design,
      )
      return isAgain || lastDesigns(problem, practice).includes(design)
        ? [{ rule: 'designRest' as const, practice, theme: null }]
        : []
    }),
  limits: (problem) => {
    const never = problem.practices.flatMap((_, practice) => {
      const last = lastDesigns(problem, practice)
      return last.length === 0 ? [] : picksWhere(problem, practice, ({ design }) => last.includes(design))
    })
    const atMostOne: (readonly Pick[])[] = []
    if (problem.designRest > 0)
      problem.designs.forEach((_, design) => {
        const picks = problem.practices.map((_, practice) =>
          picksWhere(problem, practice, (own) => own.design === design),
        )
        const last = Math.max(0, picks.length - 1 - problem.designRest)
        for (let first = 0; first <= last; first++) {
          const near = picks.slice(first, first + problem.designRest + 1).filter((own) => own.length > 0)
          if (near.length > 1) atMostOne.push(near.flat())
        }
      })
    return { ...noLimits, never, atMostOne }
  },
}

/** Designs of the record that still rest in a practice. */
function lastDesigns({ met, designRest: rest }: AheadProblem, practice: number): readonly number[] {
  const still = rest - practice
  return still > 0 ? met.slice(-still).flatMap(({ design }) => (design === null ? [] : [design])) : []
}
