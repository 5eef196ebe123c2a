import type { LimitsBoard, PickGroup } from '#ahead/limits-board'
import type { AheadChoices } from '#ahead/plan'

export type ChosenInOrder =
  | { readonly kind: 'found'; readonly choices: AheadChoices }
  /** `gaveUp`: too many ways were tried; `none`: every way was, and none keeps the rules. */
  | { readonly kind: 'none' | 'gaveUp' }

/**
 * Choices practice by practice that keep all rules. `rank` puts the offers that are left for a practice in the order in
 * which they are tried, given what was chosen before it. A way that leaves a later practice, or something that is
 * asked for, without an offer is given up at once.
 */
export function chooseInOrder(
  board: LimitsBoard,
  {
    rank,
    mostTried,
  }: {
    readonly rank: (practice: number, left: readonly number[], chosen: AheadChoices) => readonly number[]
    readonly mostTried: number
  },
): ChosenInOrder {
  const { first, practiceOf, allowed, lists, listsOf, needsOf, always } = board
  const count = first.length
  const chosen: number[] = []
  let tried = 0
  let isGivenUp = false
  const start = Uint8Array.from(allowed)
  const isOpen = narrow(start, always) && everyPracticeHas(start)
  if (isOpen && choose(0, start, always)) return { kind: 'found', choices: chosen }
  return { kind: isGivenUp ? 'gaveUp' : 'none' }

  function choose(practice: number, left: Uint8Array, asked: readonly PickGroup[]): boolean {
    if (practice === count) return true
    const base = first[practice] ?? 0
    const offers: number[] = []
    const end = first[practice + 1] ?? left.length
    for (let pick = base; pick < end; pick++) if (left[pick]) offers.push(pick - base)
    for (const offer of rank(practice, offers, chosen)) {
      if (++tried > mostTried) {
        isGivenUp = true
        return false
      }
      const next = Uint8Array.from(left)
      const groups = take(next, practice, base + offer, asked)
      if (!groups) continue
      chosen[practice] = offer
      if (choose(practice + 1, next, groups)) return true
      chosen.length = practice
      if (isGivenUp) return false
    }
    return false
  }

  /** What is left after a pick; null: nothing that could become a plan. */
  function take(
    left: Uint8Array,
    practice: number,
    pick: number,
    asked: readonly PickGroup[],
  ): readonly PickGroup[] | null {
    const end = first[practice + 1] ?? left.length
    for (let other = first[practice] ?? 0; other < end; other++) if (other !== pick) left[other] = 0
    for (const list of listsOf[pick] ?? [])
      for (const other of lists[list] ?? []) if (practiceOf[other] !== practice) left[other] = 0
    const groups = [
      ...asked.filter(({ has }) => !has[pick]),
      ...(needsOf[pick] ?? []).filter(({ has }) => !has[pick]),
    ]
    return narrow(left, groups) && everyPracticeHas(left) ? groups : null
  }

  /** Where only one practice can still bring what is asked for, it has to. False: none can. */
  function narrow(left: Uint8Array, groups: readonly PickGroup[]): boolean {
    for (const { picks, has } of groups) {
      let only = -1
      for (const pick of picks) {
        if (!left[pick]) continue
        const practice = practiceOf[pick] ?? 0
        if (only >= 0 && practice !== only) {
          only = -2
          break
        }
        only = practice
      }
      if (only === -1) return false
      if (only < 0) continue
      const end = first[only + 1] ?? left.length
      for (let pick = first[only] ?? 0; pick < end; pick++) if (!has[pick]) left[pick] = 0
    }
    return true
  }

  function everyPracticeHas(left: Uint8Array): boolean {
    for (let practice = 0; practice < count; practice++) {
      let has = false
      const end = first[practice + 1] ?? left.length
      for (let pick = first[practice] ?? 0; pick < end && !has; pick++) has = left[pick] === 1
      if (!has) return false
    }
    return true
  }
}
