import { canBePlayed } from '#ahead/can-be-played'
import { greedyAhead } from '#ahead/greedy-plan'
import { quickAhead } from '#ahead/quick-plan'
import { type AheadSearch, take, takeChoices } from '#solver/ahead-search'

/** Plans at once from so many seeds more: over random terms the best of three was now and then a tenth better. */
const moreSeeds = 2
/** Each of them only where so many times as long is left. */
const timesAsLong = 8

/** Takes the plans that are made at once: the first is told of as it is made, then the others are tried. */
export function takeFirstPlans(search: AheadSearch): void {
  const { problem, seed, deadline } = search
  const began = performance.now()
  const first = quickAhead(problem, { seed })
  const quickMs = performance.now() - began
  for (const plan of [first, greedyAhead(problem)]) if (plan && canBePlayed(problem, plan)) take(search, plan)
  if (search.best) takeChoices(search, search.best.plan.choices)
  for (let more = 1; more <= moreSeeds; more++) {
    // Where work is counted, the clock must not decide.
    if (deadline.leftWork() === null && deadline.leftMs() < timesAsLong * quickMs) return
    const plan = quickAhead(problem, { seed: seed + more })
    if (!plan || !canBePlayed(problem, plan)) continue
    take(search, plan)
    takeChoices(search, plan.choices)
  }
}
