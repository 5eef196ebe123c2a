import type { HopeBoard } from '#ahead/hope-board'
import type { LimitsBoard } from '#ahead/limits-board'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { Chance } from '#common/chance'

/** Practices in which choices that are nearly the same differ at most; in short plans an eighth of them. */
const nearlySame = 2

export type ChoiceSearch = {
  readonly limits: LimitsBoard
  readonly hope: HopeBoard
  readonly chance: Chance
  readonly start: AheadChoices
  readonly steps: number
  /** How many are wanted. */
  readonly most: number
}

/** The best choices met, best first: worse ones are taken less and less often. */
export function searchChoices(
  problem: AheadProblem,
  { limits, hope, chance, start, steps, most }: ChoiceSearch,
): readonly AheadChoices[] {
  const choices = [...start]
  hope.addAll(choices, 1)
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
  hope.addAll(choices, -1)
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
    const worst = known.length < most ? Number.POSITIVE_INFINITY : (known.at(-1)?.value ?? 0)
    if (value >= worst) return
    const near = known.filter((own) => differences(own.choices, choices) <= Math.min(nearlySame, count / 8))
    if (near.some((own) => own.value <= value)) return
    const others = known.filter((own) => !near.includes(own))
    known = [...others, { choices: [...choices], value }]
      .sort((one, own) => one.value - own.value)
      .slice(0, most)
  }
}

function differences(one: AheadChoices, other: AheadChoices): number {
  return one.filter((offer, practice) => offer !== other[practice]).length
}
