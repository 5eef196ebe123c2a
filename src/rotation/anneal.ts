import type { Chance } from '#common/chance'
import { type Board, columnsOfBoard } from '#rotation/board'
import { allLimitExcess, chainTable, keepersStillStay, limitExcess } from '#rotation/board-rules'
import {
  type Exchange,
  makeExchange,
  mayExchange,
  situationChange,
  unfairnessChange,
} from '#rotation/exchange'
import { proposals } from '#rotation/proposals'
import { roleChangesNear } from '#rotation/role-changes-near'

/** The goals in their order; one is lowered at a time, and those before it never rise. */
export const goals = ['unfairness', 'situations', 'roleChanges', 'mixing'] as const
export type Goal = (typeof goals)[number]

export type AnnealWish = {
  readonly goal: Goal
  readonly restLimit: number | null
  readonly chance: Chance
  readonly tries: number
  /** The goal's value at which nothing is left to gain. */
  readonly enough?: number
  /** The search may end as soon as every limit is kept. */
  readonly stopWhenMended?: boolean
  /** How hot it begins, 1 as a rule; less leaves a good plan nearly as it is. */
  readonly heat?: number
  /** Asked now and then; false ends the search early. */
  readonly mayGoOn: () => boolean
}

const noise = 1e-7
const tryBatch = 512

/**
 * Lowers one goal of the plan on the board by exchanges, at first also accepting some that raise it (S. Kirkpatrick,
 * C. D. Gelatt & M. P. Vecchi, "Optimization by simulated annealing", Science 220 (1983) 671-680). Every rule holds
 * throughout, but where turns beyond a limit stand at the start they are reduced first. The best plan met is left on
 * the board.
 */
export function anneal(board: Board, wish: AnnealWish): void {
  const chains = chainTable(board)
  const propose = proposals(board, chains, wish)
  const limit = wish.restLimit
  const excess = allLimitExcess(board, limit)
  const heat = startHeat(board, wish.goal) * (wish.heat ?? 1)
  const penalty = 20 * startHeat(board, wish.goal)
  const now = { value: 0, excess }
  let best = { ...now, place: board.place.slice() }
  const first = firstValue(board, wish.goal)
  for (let tried = 0; tried < wish.tries; tried += 1) {
    if (tried % tryBatch === 0 && !wish.mayGoOn()) break
    if (wish.stopWhenMended && best.excess === 0) break
    if (best.excess === 0 && first + best.value <= (wish.enough ?? Number.NEGATIVE_INFINITY) + noise) break
    const exchange = propose()
    if (exchange === null || !mayExchange(board, exchange)) continue
    if (!keepsEarlierGoals(board, wish.goal, exchange)) continue
    const temperature = heat * (1 - tried / wish.tries) ** 3
    const step = takeStep(exchange)
    if (step === null) continue
    const cost = step.value + penalty * step.excess
    if (cost > noise && wish.chance() >= Math.exp(-cost / Math.max(temperature, 1e-12))) {
      makeExchange(board, exchange)
      continue
    }
    now.value += step.value
    now.excess += step.excess
    if (now.excess < best.excess || (now.excess === best.excess && now.value < best.value - noise))
      best = { ...now, place: board.place.slice() }
  }
  restore(board, best.place)

  /** Makes the exchange and says what it changed; null, and undone, when a rule or an earlier goal forbids it. */
  function takeStep(exchange: Exchange): { readonly value: number; readonly excess: number } | null {
    const before = partOfGoal(board, wish.goal, exchange)
    const rolesBefore = wish.goal === 'mixing' ? roleChangesNear(board, exchange) : 0
    const excessBefore = pairExcess(board, exchange, limit)
    makeExchange(board, exchange)
    const excess = pairExcess(board, exchange, limit) - excessBefore
    const isLegal =
      keepersStillStay(board, chains, exchange) &&
      (excess <= 0 || now.excess > 0) &&
      (wish.goal !== 'mixing' || roleChangesNear(board, exchange) <= rolesBefore)
    if (isLegal) return { value: partOfGoal(board, wish.goal, exchange) - before, excess }
    makeExchange(board, exchange)
    return null
  }
}

function keepsEarlierGoals(board: Board, goal: Goal, exchange: Exchange): boolean {
  if (goal === 'unfairness') return true
  if (unfairnessChange(board, exchange) > noise) return false
  return goal === 'situations' || situationChange(board, exchange) <= noise
}

/** The part of the goal that the exchange can change, as the board is now. */
function partOfGoal(board: Board, goal: Goal, exchange: Exchange): number {
  if (goal === 'unfairness') return squares(board, exchange, { from: 0, to: 4 })
  if (goal === 'situations') return squares(board, exchange, { from: 4, to: 7 })
  return goal === 'roleChanges' ? roleChangesNear(board, exchange) : mixingOf(board, exchange)
}

function squares(
  board: Board,
  { one, other }: Exchange,
  columns: { readonly from: number; readonly to: number },
): number {
  let sum = 0
  for (let column = columns.from; column < columns.to; column += 1) {
    sum += (board.left[one * columnsOfBoard + column] as number) ** 2
    sum += (board.left[other * columnsOfBoard + column] as number) ** 2
  }
  return sum
}

function pairExcess(board: Board, { one, other }: Exchange, limit: number | null): number {
  return limitExcess(board, one, limit) + limitExcess(board, other, limit)
}

function mixingOf(board: Board, { one, other }: Exchange): number {
  if (board.wished) return mixingWithWishes(board, board.wished, { one, other })
  let sum = 0
  for (let third = 0; third < board.players; third += 1) {
    sum += (board.together[one * board.players + third] as number) ** 2
    sum += (board.together[other * board.players + third] as number) ** 2
  }
  // The pair itself is in both rows.
  return sum - (board.together[one * board.players + other] as number) ** 2
}

/** What a meeting of a pair that should be together is worth; far more than any pair's first meetings cost. */
const wishWorth = 50

/** Pairs that should be together count the more the better, all others as in mixing. */
function mixingWithWishes(
  board: Board,
  wished: Uint8Array,
  { one, other }: Pick<Exchange, 'one' | 'other'>,
): number {
  let sum = 0
  for (const player of [one, other]) {
    for (let third = 0; third < board.players; third += 1) {
      if (player === other && third === one) continue
      const at = player * board.players + third
      const times = board.together[at] as number
      sum += wished[at] ? -wishWorth * times : times ** 2
    }
  }
  return sum
}

function firstValue(board: Board, goal: Goal): number {
  if (goal !== 'mixing') return Number.POSITIVE_INFINITY
  return board.together.reduce((sum, times) => sum + times ** 2, 0) / 2
}

function startHeat(board: Board, goal: Goal): number {
  if (goal === 'mixing') return 2
  if (goal === 'roleChanges') return 1
  const seconds = board.seconds.reduce((sum, own) => sum + own, 0) / Math.max(1, board.turns)
  return seconds ** 2
}

/** Lays another plan of the same problem on the board, sums and all. */
export function restore(board: Board, place: Int16Array): void {
  for (let turn = 0; turn < board.turns; turn += 1) restoreTurn(board, turn, place)
}

function restoreTurn(board: Board, turn: number, place: Int16Array): void {
  const { players } = board
  for (let player = 0; player < players; player += 1) {
    const wanted = place[turn * players + player] as number
    if (board.place[turn * players + player] === wanted) continue
    for (let other = player + 1; other < players; other += 1) {
      if (board.place[turn * players + other] !== wanted) continue
      makeExchange(board, { one: player, other, turns: [turn] })
      break
    }
  }
}
