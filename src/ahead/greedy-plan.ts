import { chooseInOrder } from '#ahead/choose-in-order'
import { type HopeBoard, hopeBoard } from '#ahead/hope-board'
import { leansFor } from '#ahead/lean-to'
import { type LimitsBoard, limitsBoard } from '#ahead/limits-board'
import type { AheadChoices, AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'

const mostTried = 4000

/**
 * The plain planner that others are held against: practice by practice the offer after which everything would stand
 * best, as if the term ended there. Null: it found no way that keeps the rules.
 */
export function greedyAhead(problem: AheadProblem): AheadPlan | null {
  const choices = greedyChoices(limitsBoard(problem), hopeBoard(problem))
  return choices && { choices, leans: leansFor(problem, choices) }
}

export function greedyChoices(limits: LimitsBoard, hope: HopeBoard): AheadChoices | null {
  const way = chooseInOrder(limits, {
    mostTried,
    rank: (practice, left, chosen) => {
      hope.addAll(chosen, 1)
      const ranked = left
        .map((offer) => {
          hope.add(practice, offer, 1)
          const value = hope.value()
          hope.add(practice, offer, -1)
          return { offer, value }
        })
        .sort((one, other) => one.value - other.value || one.offer - other.offer)
      hope.addAll(chosen, -1)
      return ranked.map(({ offer }) => offer)
    },
  })
  return way.kind === 'found' ? way.choices : null
}
