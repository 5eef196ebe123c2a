import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

/** Every way to choose one offer for each practice. */
export function* allChoices({ practices }: Pick<AheadProblem, 'practices'>): Generator<AheadChoices> {
  if (practices.some(({ offers }) => offers.length === 0)) return
  const choices = practices.map(() => 0)
  while (true) {
    yield [...choices]
    let at = choices.length - 1
    while (at >= 0 && (choices[at] ?? 0) + 1 >= (practices[at]?.offers.length ?? 0)) choices[at--] = 0
    if (at < 0) return
    choices[at] = (choices[at] ?? 0) + 1
  }
}
