import { chosenOffer } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { type AheadRule, noLimits, type Pick } from '#ahead/rule'
import { picksWhere } from '#ahead/themes-met'

/**
 * A design is not chosen again in so many practices after it, those of the record included: variety. A design that the
 * coach holds is asked for and may come when it is held; the others keep their distance from it.
 */
export const designRest: AheadRule = {
  name: 'designRest',
  faults: (problem, choices) =>
    problem.practices.flatMap((_, practice) => {
      const design = chosenOffer(problem, choices, practice)?.design ?? null
      if (design === null || heldDesign(problem, practice) !== null) return []
      const isAgain = problem.practices.some(
        (_, earlier) =>
          earlier < practice &&
          practice - earlier <= problem.designRest &&
          heldDesign(problem, earlier) === null &&
          chosenOffer(problem, choices, earlier)?.design === design,
      )
      return isAgain || restingDesigns(problem, practice).includes(design)
        ? [{ rule: 'designRest' as const, practice, theme: null }]
        : []
    }),
  limits: (problem) => {
    const isHeld = problem.practices.map((_, practice) => heldDesign(problem, practice) !== null)
    const never = problem.practices.flatMap((_, practice) => {
      const resting = isHeld[practice] ? [] : restingDesigns(problem, practice)
      return resting.length === 0
        ? []
        : picksWhere(problem, practice, ({ design }) => resting.includes(design))
    })
    const atMostOne: (readonly Pick[])[] = []
    if (problem.designRest > 0)
      problem.designs.forEach((_, design) => {
        const picks = problem.practices.map((_, practice) =>
          isHeld[practice] ? [] : picksWhere(problem, practice, (own) => own.design === design),
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

function heldDesign({ practices }: AheadProblem, practice: number): number | null {
  return practices[practice]?.held?.design ?? null
}

/** Designs that rest in a practice, whatever is chosen: those of the record before it, and those held near it. */
function restingDesigns(problem: AheadProblem, practice: number): readonly number[] {
  const { met, practices, designRest: rest } = problem
  const still = rest - practice
  const last = still > 0 ? met.slice(-still).map(({ design }) => design) : []
  const near = practices.map((_, other) =>
    other !== practice && Math.abs(other - practice) <= rest ? heldDesign(problem, other) : null,
  )
  return [...last, ...near].filter((design) => design !== null)
}
