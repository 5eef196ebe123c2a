import { chooseInOrder } from '#ahead/choose-in-order'
import { greedyChoices } from '#ahead/greedy-plan'
import { type HopeBoard, hopeBoard } from '#ahead/hope-board'
import { leansFor } from '#ahead/lean-to'
import { type LimitsBoard, limitsBoard } from '#ahead/limits-board'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import { planValue } from '#ahead/plan-value'
import type { AheadProblem } from '#ahead/problem'
import { type Chance, seededChance } from '#common/chance'

/** Exchanges tried; more find better plans and take longer. */
const usualSteps = 20_000
const mostTried = 4000
/** Choices whose leans are sketched, with so many sweeps; those of the best are then worked out. */
const finalists = 4
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
  const ways = [start, ...search(problem, { limits, hope, chance, start, steps })]
  const sketched = ways.map((choices) => withLeans(problem, choices, sketchSweeps))
  const best = sketched.reduce((least, own) => (own.value < least.value ? own : least))
  const candidates = [best, withLeans(problem, best.plan.choices)]
  // The greedy plan may have been sketched worse than it is, but not by so much.
  if (greedy && best.plan.choices !== greedy && (sketched[0]?.value ?? 0) < closeCall * best.value)
    candidates.push(withLeans(problem, greedy))
  return candidates.reduce((least, own) => (own.value < least.value ? own : least)).plan
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

type Search = {
  readonly limits: LimitsBoard
  readonly hope: HopeBoard
  readonly chance: Chance
  readonly start: AheadChoices
  readonly steps: number
}

/** The best choices met, best first: worse ones are taken less and less often. */
function search(
  problem: AheadProblem,
  { limits, hope, chance, start, steps }: Search,
): readonly AheadChoices[] {
  const choices = [...start]
  choices.forEach((offer, practice) => {
    hope.add(practice, offer, 1)
  })
  let value = hope.value()
  const known = new Map<string, { readonly choices: AheadChoices; readonly value: number }>()
  const hottest = value * 0.01 + 1
  const count = choices.length
  for (let step = 0; step < steps && count > 0; step++) {
    const heat = hottest * (1 - step / steps) ** 2
    const change = chance() < 0.7 || count < 2 ? otherOffer() : exchange()
    if (!change) continue
    const before = change.map(([practice]) => choices[practice] ?? 0)
    apply(change)
    const after = hope.value()
    const isTaken = after <= value || chance() < Math.exp((value - after) / Math.max(heat, 1e-9))
    if (isTaken && limits.isKept(choices)) {
      value = after
      note()
    } else apply(change.map(([practice], index) => [practice, before[index] ?? 0] as const))
  }
  return [...known.values()].sort((one, other) => one.value - other.value).map((own) => own.choices)

  function apply(change: readonly (readonly [number, number])[]): void {
    for (const [practice, offer] of change) {
      hope.add(practice, choices[practice] ?? 0, -1)
      hope.add(practice, offer, 1)
      choices[practice] = offer
    }
  }

  function otherOffer(): readonly (readonly [number, number])[] | null {
    const practice = Math.floor(chance() * count)
    const offers = problem.practices[practice]?.offers.length ?? 0
    const offer = Math.floor(chance() * offers)
    return offer === choices[practice] ? null : [[practice, offer]]
  }

  function exchange(): readonly (readonly [number, number])[] | null {
    const [one, other] = [Math.floor(chance() * count), Math.floor(chance() * count)]
    if (one === other) return null
    const [there, here] = [sameOffer(one, other), sameOffer(other, one)]
    return there < 0 || here < 0
      ? null
      : [
          [one, here],
          [other, there],
        ]
  }

  /** The offer chosen for one practice, by its place in another. */
  function sameOffer(from: number, to: number): number {
    const own = problem.practices[from]?.offers[choices[from] ?? -1]
    return (problem.practices[to]?.offers ?? []).findIndex(
      ({ theme, design }) => theme === own?.theme && design === own.design,
    )
  }

  function note(): void {
    const worst =
      known.size < finalists
        ? Number.POSITIVE_INFINITY
        : Math.max(...[...known.values()].map((own) => own.value))
    if (value >= worst) return
    const key = choices.join()
    if (known.has(key)) return
    known.set(key, { choices: [...choices], value })
    if (known.size <= finalists) return
    const last = [...known].reduce((far, own) => (own[1].value > far[1].value ? own : far))
    known.delete(last[0])
  }
}
