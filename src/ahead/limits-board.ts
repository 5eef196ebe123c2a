import { aheadRules } from '#ahead/ahead-rules'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { Pick } from '#ahead/rule'

/** All rules of a problem as tables. Picks are numbered through all practices: `first[practice] + offer`. */
export type LimitsBoard = {
  readonly first: readonly number[]
  readonly practiceOf: readonly number[]
  /** By pick: 1 where no rule forbids it by itself. */
  readonly allowed: Uint8Array
  /** Of each list at most one is chosen; and by pick the lists that it is in. */
  readonly lists: readonly (readonly number[])[]
  readonly listsOf: readonly (readonly number[])[]
  /** By pick: groups of which one has to be chosen with it; `always`: whatever is chosen. */
  readonly needsOf: readonly (readonly PickGroup[])[]
  readonly always: readonly PickGroup[]
  /** Whether choices keep every rule. */
  readonly isKept: (choices: AheadChoices) => boolean
}

export type PickGroup = { readonly picks: readonly number[]; readonly has: Uint8Array }

export function limitsBoard(problem: AheadProblem): LimitsBoard {
  let all = 0
  const first = problem.practices.map(({ offers }) => {
    all += offers.length
    return all - offers.length
  })
  const number = ({ practice, offer }: Pick) => (first[practice] ?? 0) + offer
  const practiceOf = problem.practices.flatMap(({ offers }, practice) => offers.map(() => practice))
  const allowed = new Uint8Array(all).fill(1)
  const lists: (readonly number[])[] = []
  const listsOf: number[][] = practiceOf.map(() => [])
  const needsOf: PickGroup[][] = practiceOf.map(() => [])
  const always: PickGroup[] = []
  const groups = new Map<readonly Pick[], PickGroup>()
  const groupOf = (picks: readonly Pick[]): PickGroup => {
    const known = groups.get(picks)
    if (known) return known
    const has = new Uint8Array(all)
    const numbers = picks.map(number)
    for (const pick of numbers) has[pick] = 1
    const made = { picks: numbers, has }
    groups.set(picks, made)
    return made
  }
  for (const { limits } of aheadRules) {
    const { never, atMostOne, needs, atLeastOne } = limits(problem)
    for (const pick of never) allowed[number(pick)] = 0
    for (const list of atMostOne) {
      const numbers = list.map(number)
      for (const pick of numbers) listsOf[pick]?.push(lists.length)
      lists.push(numbers)
    }
    for (const { pick, oneOf } of needs) needsOf[number(pick)]?.push(groupOf(oneOf))
    for (const list of atLeastOne) always.push(groupOf(list))
  }
  const seen = new Int32Array(lists.length)
  let turn = 0
  const chosen = new Int32Array(first.length)

  function isKept(choices: AheadChoices): boolean {
    turn++
    for (let practice = 0; practice < first.length; practice++) {
      const pick = (first[practice] ?? 0) + (choices[practice] ?? -1)
      if (practiceOf[pick] !== practice || !allowed[pick]) return false
      chosen[practice] = pick
      for (const list of listsOf[pick] ?? []) {
        if (seen[list] === turn) return false
        seen[list] = turn
      }
    }
    for (const pick of chosen) for (const group of needsOf[pick] ?? []) if (!isMet(group)) return false
    return always.every(isMet)
  }
  function isMet({ has }: PickGroup): boolean {
    for (const pick of chosen) if (has[pick]) return true
    return false
  }
  return { first, practiceOf, allowed, lists, listsOf, needsOf, always, isKept }
}
