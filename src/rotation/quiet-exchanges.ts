import type { Board } from '#rotation/board'
import { type ChainTable, chainTable, keepersStillStay, limitExcess } from '#rotation/board-rules'
import {
  type Exchange,
  makeExchange,
  mayExchange,
  situationChange,
  unfairnessChange,
} from '#rotation/exchange'
import { away } from '#rotation/place'

const noise = 1e-6

export type QuietWish = {
  readonly board: Board
  readonly restLimit: number | null
  /** Most exchanges looked at. */
  readonly most: number
  /** With whom a player should change places in a turn; none: it is well where it is. */
  readonly partners: (turn: number, player: number) => readonly number[]
  /** What is to be lowered, as far as an exchange can touch it, as the board is now. */
  readonly costNear: (exchange: Exchange) => number
  /** Whether situations may become less even for it. */
  readonly mayTouchSituations: boolean
}

type Search = QuietWish & { readonly chains: ChainTable; left: number }

/**
 * Lowers a cost by exchanges that make the plan no less fair and break no rule: two players in one turn, in two turns in
 * which their roles cross, or a keeper's whole duty. Returns how many were made.
 */
export function quietExchanges(wish: QuietWish): number {
  const search: Search = { ...wish, chains: chainTable(wish.board), left: wish.most }
  const { board } = wish
  let made = 0
  for (let before = -1; made > before && search.left > 0; ) {
    before = made
    for (let turn = 0; turn < board.turns; turn += 1)
      for (let player = 0; player < board.players; player += 1) if (improves(search, turn, player)) made += 1
  }
  return made
}

function improves(search: Search, turn: number, player: number): boolean {
  const { board } = search
  for (const other of search.partners(turn, player)) {
    const first = wholeDuty(search, { one: player, other, turns: [turn] })
    if (tryExchange(search, first)) return true
    if (first.turns.length > 1) continue
    for (let second = 0; second < board.turns; second += 1) {
      if (second === turn || search.left <= 0 || !crosses(board, first, second)) continue
      const turns = second < turn ? [second, turn] : [turn, second]
      if (tryExchange(search, { ...first, turns })) return true
    }
  }
  return false
}

/** Where one of the two keeps goal for a round, both change for all of it. */
function wholeDuty({ board, chains }: Search, exchange: Exchange): Exchange {
  const [turn = 0] = exchange.turns
  for (const player of [exchange.one, exchange.other]) {
    const chain = chains[turn]?.get(board.place[turn * board.players + player] as number)
    if (!chain) continue
    const turns = chain.turns.filter((own) => board.place[own * board.players + player] === chain.place)
    return { ...exchange, turns }
  }
  return exchange
}

/** Whether the two have each other's roles of the first turn in a second turn of the same length. */
function crosses(board: Board, { one, other, turns }: Exchange, second: number): boolean {
  const [first = 0] = turns
  if (board.seconds[first] !== board.seconds[second]) return false
  const at = (turn: number, player: number) => board.place[turn * board.players + player] as number
  const [mine, theirs] = [at(second, one), at(second, other)]
  if (mine === away || theirs === away) return false
  const isCrossed =
    board.role[mine] === board.role[at(first, other)] && board.role[theirs] === board.role[at(first, one)]
  return isCrossed && board.role[mine] !== board.role[theirs]
}

function tryExchange(search: Search, exchange: Exchange): boolean {
  const { board, chains, restLimit } = search
  search.left -= 1
  if (!mayExchange(board, exchange) || unfairnessChange(board, exchange) > noise) return false
  if (!search.mayTouchSituations && situationChange(board, exchange) > noise) return false
  const excess = () =>
    limitExcess(board, exchange.one, restLimit) + limitExcess(board, exchange.other, restLimit)
  const before = { cost: search.costNear(exchange), excess: excess() }
  makeExchange(board, exchange)
  const isBetter =
    excess() <= before.excess &&
    keepersStillStay(board, chains, exchange) &&
    search.costNear(exchange) < before.cost
  if (!isBetter) makeExchange(board, exchange)
  return isBetter
}
