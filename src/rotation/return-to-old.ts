import type { Board } from '#rotation/board'
import { type ChainTable, chainTable, keepersStillStay, limitExcess } from '#rotation/board-rules'
import { type Exchange, makeExchange, mayExchange, unfairnessChange } from '#rotation/exchange'
import { away, resting } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'

const noise = 1e-6

/**
 * Brings the plan on the board back to an older one wherever that makes it no less fair: places of the old plan by
 * exchanges of two players, in one turn or in two that cross. Every rule is kept. `most`: exchanges looked at. Returns
 * how many were made.
 */
export function returnToOld(
  board: Board,
  old: RotationPlan,
  wish: { readonly restLimit: number | null; readonly most: number },
): number {
  const chains = chainTable(board)
  const search = { board, old, chains, restLimit: wish.restLimit, left: wish.most }
  let made = 0
  for (let before = -1; made > before && search.left > 0; ) {
    before = made
    for (let turn = 0; turn < board.turns; turn += 1)
      for (let player = 0; player < board.players; player += 1) if (comesBack(search, turn, player)) made += 1
  }
  return made
}

type Search = {
  readonly board: Board
  readonly old: RotationPlan
  readonly chains: ChainTable
  readonly restLimit: number | null
  left: number
}

/** Gives a player the place that the old plan gave it in a turn, if some exchange does so for nothing. */
function comesBack(search: Search, turn: number, player: number): boolean {
  const { board, old } = search
  const base = turn * board.players
  const wanted = old[turn]?.[player] ?? away
  const mine = board.place[base + player] as number
  if (wanted === away || mine === away || mine === wanted) return false
  for (let other = 0; other < board.players; other += 1) {
    if (board.place[base + other] !== wanted || (old[turn]?.[other] ?? away) === wanted) continue
    const first = wholeDuty(search, { one: player, other, turns: [turn] })
    if (tryExchange(search, first)) return true
    if (board.role[mine] === board.role[wanted] || first.turns.length > 1) continue
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
  return (
    board.role[mine] === board.role[at(first, other)] && board.role[theirs] === board.role[at(first, one)]
  )
}

function tryExchange(search: Search, exchange: Exchange): boolean {
  const { board, chains, restLimit } = search
  search.left -= 1
  if (!mayExchange(board, exchange) || unfairnessChange(board, exchange) > noise) return false
  const excess = () =>
    limitExcess(board, exchange.one, restLimit) + limitExcess(board, exchange.other, restLimit)
  const before = { cost: costNear(search, exchange), excess: excess() }
  makeExchange(board, exchange)
  const isBetter =
    excess() <= before.excess &&
    keepersStillStay(board, chains, exchange) &&
    costNear(search, exchange) < before.cost
  if (!isBetter) makeExchange(board, exchange)
  return isBetter
}

/** Places that differ from the old plan in the turns of an exchange count two, changes of role around them one. */
function costNear({ board, old }: Search, { one, other, turns }: Exchange): number {
  let cost = 0
  for (const turn of turns) {
    for (const player of [one, other]) {
      const before = old[turn]?.[player] ?? away
      if (before !== away && board.place[turn * board.players + player] !== before) cost += 2
      cost += changesRole(board, player, turn)
      // Of turns next to each other the change between them is counted once.
      if (!turns.includes(turn + 1)) cost += changesRole(board, player, turn + 1)
    }
  }
  return cost
}

function changesRole(board: Board, player: number, turn: number): 0 | 1 {
  if (turn < 1 || turn >= board.turns || board.roundOf[turn] !== board.roundOf[turn - 1]) return 0
  const place = board.place[turn * board.players + player] as number
  const before = board.place[(turn - 1) * board.players + player] as number
  return place > resting && before > resting && board.role[place] !== board.role[before] ? 1 : 0
}
