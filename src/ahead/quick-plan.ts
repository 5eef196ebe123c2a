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
const usualSteps = 15_000
const mostTried = 4000
/** Choices whose leans are sketched, with so many sweeps; those of the best are then worked out. */
const finalists = 3
const sketchSweeps = 2
/** Practices in which choices that are nearly the same differ at most. */
const nearlySame = 2
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
  let known: readonly { readonly choices: AheadChoices; readonly value: number }[] = []
  const hottest = value * 0.03 + 1
  const count = choices.length
  // What is tried: an offer for one practice, and in an exchange one for another (else −1).
  let [practice, offer, other, otherOffer] = [0, 0, -1, 0]
  for (let step = 0; step < steps && count > 0; step++) {
    const heat = hottest * (1 - step / steps) ** 2
    if (!propose()) continue
    const [was, otherWas] = [choices[practice] ?? 0, choices[other] ?? 0]
    put(practice, offer)
    if (other >= 0) put(other, otherOffer)
    const after = hope.value()
    const isTaken = after <= value || chance() < Math.exp((value - after) / Math.max(heat, 1e-9))
    if (isTaken && limits.isKept(choices)) {
      value = after
      note()
    } else {
      put(practice, was)
      if (other >= 0) put(other, otherWas)
    }
  }
  return known.map((own) => own.choices)

  function put(at: number, chosen: number): void {
    hope.change(at, choices[at] ?? 0, chosen)
    choices[at] = chosen
  }

  /** Another offer for a practice, or the offers of two exchanged. False: that would change nothing. */
  function propose(): boolean {
    practice = Math.floor(chance() * count)
    if (chance() < 0.5 || count < 2) {
      other = -1
      offer = Math.floor(chance() * (problem.practices[practice]?.offers.length ?? 0))
      return offer !== choices[practice]
    }
    other = Math.floor(chance() * count)
    if (other === practice) return false
    offer = sameOffer(other, practice)
    otherOffer = sameOffer(practice, other)
    return offer >= 0 && otherOffer >= 0
  }

  /** The offer chosen for one practice, by its place in another. */
  function sameOffer(from: number, to: number): number {
    const own = problem.practices[from]?.offers[choices[from] ?? -1]
    return (problem.practices[to]?.offers ?? []).findIndex(
      ({ theme, design }) => theme === own?.theme && design === own.design,
    )
  }

  /** Of choices that are nearly the same only the best are kept, so that what is kept differs. */
  function note(): void {
    const worst = known.length < finalists ? Number.POSITIVE_INFINITY : (known.at(-1)?.value ?? 0)
    if (value >= worst) return
    const near = known.filter((own) => differences(own.choices, choices) <= nearlySame)
    if (near.some((own) => own.value <= value)) return
    const others = known.filter((own) => !near.includes(own))
    known = [...others, { choices: [...choices], value }]
      .sort((one, own) => one.value - own.value)
      .slice(0, finalists)
  }
}

function differences(one: AheadChoices, other: AheadChoices): number {
  return one.filter((offer, practice) => offer !== other[practice]).length
}
