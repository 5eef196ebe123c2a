import { chooseInOrder } from '#ahead/choose-in-order'
import { greedyChoices } from '#ahead/greedy-plan'
import { hopeBoard } from '#ahead/hope-board'
import { leansFor } from '#ahead/lean-to'
import { type LimitsBoard, limitsBoard } from '#ahead/limits-board'
import { nearChoices } from '#ahead/near-choices'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { searchChoices } from '#ahead/search-choices'
import { type Chance, seededChance } from '#common/chance'

/** Exchanges tried; more find better plans and take longer. */
const usualSteps = 15_000
const mostTried = 4000
/** Choices whose leans are sketched, with so many sweeps; those of the best are then worked out. */
const finalists = { least: 3, most: 12 }
/** So many practices are worked out in all, where there are fewer of them. */
const practicesWorkedOut = 60
const sketchSweeps = 2
/** Sketched leans were never more than a thirtieth worse than those worked out, over random terms. */
const closeCall = 1.1

/**
 * A plan at once: choices practice by practice, made better by trying other offers and exchanging two practices, judged
 * by what they could come to; of the best of them the leans are worked out, and the best plan stays. Never worse than the
 * greedy one; the same for the same seed. Null: no way that keeps the rules was found.
 */
export function quickAhead(
  problem: AheadProblem,
  { seed, steps = usualSteps }: { readonly seed: number; readonly steps?: number },
): AheadPlan | null {
  const [limits, hope, chance] = [limitsBoard(problem), hopeBoard(problem), seededChance(seed)]
  const greedy = greedyChoices(limits, hope)
  const start = greedy ?? anyChoices(limits, chance)
  if (!start) return null
  const most = Math.max(
    finalists.least,
    Math.min(finalists.most, Math.round(practicesWorkedOut / Math.max(1, start.length))),
  )
  const ways = [start, ...searchChoices(problem, { limits, hope, chance, start, steps, most })]
  const sketched = ways.map((choices) => withLeans(problem, choices, sketchSweeps))
  const found = sketched.reduce((least, own) => (own.value < least.value ? own : least))
  const best = betterNearby(found)
  const candidates = [best, withLeans(problem, best.plan.choices)]
  // The greedy plan may have been sketched worse than it is, but not by so much.
  if (greedy && best.plan.choices !== greedy && (sketched[0]?.value ?? 0) < closeCall * best.value)
    candidates.push(withLeans(problem, greedy))
  return candidates.reduce((least, own) => (own.value < least.value ? own : least)).plan

  /** One practice after another changed, the most hopeful changes first, as long as that makes the plan itself better. */
  function betterNearby(from: Valued): Valued {
    let now = from
    for (let left = most, near = nearby(now.plan.choices); left > 0 && near.length > 0; left--) {
      const [choices = [], ...others] = near
      const next = withLeans(problem, choices, sketchSweeps)
      near = next.value < now.value ? nearby(choices) : others
      if (next.value < now.value) now = next
    }
    return now
  }
  function nearby(choices: AheadChoices): readonly AheadChoices[] {
    return nearChoices(problem, { limits, hope, choices, most })
  }
}

type Valued = { readonly plan: AheadPlan; readonly value: number }

function withLeans(problem: AheadProblem, choices: AheadChoices, sweeps?: number): Valued {
  const plan = { choices, leans: leansFor(problem, choices, sweeps === undefined ? {} : { sweeps }) }
  return { plan, value: planValue(problem, plan).all }
}

/** Where the best offers lead nowhere, any that lead somewhere. */
function anyChoices(limits: LimitsBoard, chance: Chance): AheadChoices | null {
  for (let tried = 0; tried < 3; tried++) {
    const way = chooseInOrder(limits, {
      mostTried,
      rank: (_, left) =>
        left
          .map((offer) => ({ offer, at: chance() }))
          .sort((one, other) => one.at - other.at)
          .map(({ offer }) => offer),
    })
    if (way.kind === 'found') return way.choices
    if (way.kind === 'none') return null
  }
  return null
}
