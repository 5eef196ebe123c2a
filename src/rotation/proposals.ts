import type { Chance } from '#common/chance'
import type { Board } from '#rotation/board'
import type { ChainTable } from '#rotation/board-rules'
import type { Exchange } from '#rotation/exchange'
import { away } from '#rotation/place'

/** How often (of 1) a search for even shares proposes each kind; the rest are exchanges in one turn. */
const fairShares = { twoTurns: 0.25, keeper: 0.15 }

/**
 * Draws exchanges that may help a goal. For even shares: two players in one turn, in two turns, or a keeper with
 * another for all of its duty. For later goals: those that leave every count of turns by role as it is, which is two
 * turns in which the two players' roles cross, or one in which their roles are the same.
 */
export function proposals(
  board: Board,
  chains: ChainTable,
  wish: { readonly goal: string; readonly chance: Chance },
): () => Exchange | null {
  const { chance } = wish
  const { players, turns, place } = board
  const draw = (count: number) => Math.floor(chance() * count)
  const at = (turn: number, player: number) => place[turn * players + player] as number
  const areApart = (turn: number, one: number, other: number) =>
    at(turn, one) !== away && at(turn, other) !== away && at(turn, one) !== at(turn, other)

  function pair(): Exchange | null {
    const turn = draw(turns)
    const one = draw(players)
    const other = draw(players)
    return one !== other && areApart(turn, one, other) ? { one, other, turns: [turn] } : null
  }

  function withSecondTurn(first: Exchange): Exchange | null {
    const turn = draw(turns)
    const [own = 0] = first.turns
    if (turn === own || !areApart(turn, first.one, first.other)) return null
    return { ...first, turns: own < turn ? [own, turn] : [turn, own] }
  }

  function crossed(first: Exchange): Exchange | null {
    const [own = 0] = first.turns
    if (board.role[at(own, first.one)] === board.role[at(own, first.other)]) return first
    const turn = crossingTurn(board, first, draw(turns))
    return turn === null ? null : { ...first, turns: own < turn ? [own, turn] : [turn, own] }
  }

  function wholeDuty(first: Exchange): Exchange | null {
    const [own = 0] = first.turns
    const keeper = chains[own]?.has(at(own, first.one)) ? first.one : first.other
    const chain = chains[own]?.get(at(own, keeper))
    if (!chain) return null
    const duty = chain.turns.filter((turn) => at(turn, keeper) === chain.place)
    const other = keeper === first.one ? first.other : first.one
    return duty.every((turn) => areApart(turn, keeper, other)) ? { one: keeper, other, turns: duty } : null
  }

  return () => {
    const first = pair()
    if (first === null) return null
    if (wish.goal !== 'unfairness') return crossed(first)
    const kind = chance()
    if (kind < fairShares.keeper) return wholeDuty(first)
    return kind < fairShares.keeper + fairShares.twoTurns ? withSecondTurn(first) : first
  }
}

/** From a turn on, all round, the first as long in which the two have each other's roles of the exchange's turn. */
function crossingTurn(board: Board, { one, other, turns }: Exchange, start: number): number | null {
  const [own = 0] = turns
  const roleAt = (turn: number, player: number) => {
    const place = board.place[turn * board.players + player] as number
    return place === away ? away : board.role[place]
  }
  const [mine, theirs] = [roleAt(own, one), roleAt(own, other)]
  for (let step = 0; step < board.turns; step += 1) {
    const turn = (start + step) % board.turns
    if (turn === own || board.seconds[turn] !== board.seconds[own]) continue
    if (roleAt(turn, one) === theirs && roleAt(turn, other) === mine) return turn
  }
  return null
}
