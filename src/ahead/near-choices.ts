import type { HopeBoard } from '#ahead/hope-board'
import type { LimitsBoard } from '#ahead/limits-board'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Choices that differ from these in one practice and keep all rules, the most hopeful first. */
export function nearChoices(
  { practices }: Pick<AheadProblem, 'practices'>,
  {
    limits,
    hope,
    choices,
    most,
  }: {
    readonly limits: LimitsBoard
    readonly hope: HopeBoard
    readonly choices: AheadChoices
    readonly most: number
  },
): readonly AheadChoices[] {
  const found: { readonly near: AheadChoices; readonly value: number }[] = []
  hope.addAll(choices, 1)
  practices.forEach(({ offers }, practice) => {
    const now = choices[practice] ?? 0
    for (let offer = 0; offer < offers.length; offer++) {
      if (offer === now) continue
      const near = choices.map((own, at) => (at === practice ? offer : own))
      if (!limits.isKept(near)) continue
      hope.change(practice, now, offer)
      found.push({ near, value: hope.value() })
      hope.change(practice, offer, now)
    }
  })
  hope.addAll(choices, -1)
  return found
    .sort((one, other) => one.value - other.value)
    .slice(0, most)
    .map(({ near }) => near)
}
