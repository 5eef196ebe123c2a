import type { Board } from '#rotation/board'
import { type ChainTable, chainTable, keepersStillStay, limitExcess } from '#rotation/board-rules'
import { type Exchange, makeExchange, mayExchange, unfairnessChange } from '#rotation/exchange'

const noise = 1e-9

/**
 * Makes every exchange of two players' places in one turn that makes the plan fairer and breaks no rule, until there is
 * none left. The plan on the board keeps every rule before and after. Returns how many were made.
 */
export function settle(board: Board, restLimit: number | null): number {
  const chains = chainTable(board)
  let made = 0
  for (let quiet = 0; quiet < board.turns; ) {
    for (let turn = 0; turn < board.turns && quiet < board.turns; turn += 1) {
      const own = settleTurn(board, { turn, chains, restLimit })
      made += own
      quiet = own > 0 ? 0 : quiet + 1
    }
  }
  return made
}

function settleTurn(
  board: Board,
  at: { readonly turn: number; readonly chains: ChainTable; readonly restLimit: number | null },
): number {
  let made = 0
  for (let one = 0; one < board.players; one += 1) {
    for (let other = one + 1; other < board.players; other += 1) {
      const exchange: Exchange = { one, other, turns: [at.turn] }
      if (!mayExchange(board, exchange) || unfairnessChange(board, exchange) >= -noise) continue
      const before = excessOf(board, exchange, at.restLimit)
      makeExchange(board, exchange)
      const isLegal =
        excessOf(board, exchange, at.restLimit) <= before && keepersStillStay(board, at.chains, exchange)
      if (isLegal) made += 1
      else makeExchange(board, exchange)
    }
  }
  return made
}

function excessOf(board: Board, { one, other }: Exchange, limit: number | null): number {
  return limitExcess(board, one, limit) + limitExcess(board, other, limit)
}
