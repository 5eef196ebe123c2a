import { type ChosenInOrder, chooseInOrder } from '#ahead/choose-in-order'
import { limitsBoard } from '#ahead/limits-board'
import type { AheadProblem } from '#ahead/problem'

const mostTried = 20_000

/** Choices that keep all rules, whatever they are worth; `none` when every way was tried and there are none. */
export function possibleChoices(problem: AheadProblem): ChosenInOrder {
  return chooseInOrder(limitsBoard(problem), { mostTried, rank: (_, left) => left })
}
