import type { Board } from '#rotation/board'
import type { Exchange } from '#rotation/exchange'
import { type KeeperChain, keeperChains } from '#rotation/keeper-chains'
import { resting } from '#rotation/place'

/** Turns beyond `limit` that a player rests in a row, over all its runs. */
export function restExcess(board: Board, player: number, limit: number): number {
  let excess = 0
  let run = 0
  for (let at = player; at < board.place.length; at += board.players) {
    run = board.place[at] === resting ? run + 1 : 0
    if (run > limit) excess += 1
  }
  return excess
}

export function allRestExcess(board: Board, limit: number): number {
  let excess = 0
  for (let player = 0; player < board.players; player += 1) excess += restExcess(board, player, limit)
  return excess
}

/** By turn and place, the chain of keepers who stay that the place belongs to. */
export type ChainTable = readonly ReadonlyMap<number, KeeperChain>[]

export function chainTable(board: Board): ChainTable {
  const table = board.problem.turns.map(() => new Map<number, KeeperChain>())
  for (const chain of keeperChains(board.problem))
    for (const turn of chain.turns) table[turn]?.set(chain.place, chain)
  return table
}

/** Whether the chains that an exchange, already on the board, has touched still keep their keepers. */
export function keepersStillStay(board: Board, chains: ChainTable, { one, other, turns }: Exchange): boolean {
  for (const turn of turns) {
    for (const player of [one, other]) {
      const chain = chains[turn]?.get(board.place[turn * board.players + player] as number)
      if (chain && !keepsItsKeepers(board, chain)) return false
    }
  }
  return true
}

function keepsItsKeepers(board: Board, chain: KeeperChain): boolean {
  let before = -1
  for (const turn of chain.turns) {
    const base = turn * board.players
    if (before >= 0 && board.place[base + before] === chain.place) continue
    if (before >= 0 && (board.place[base + before] as number) >= resting) return false
    before = board.place.subarray(base, base + board.players).indexOf(chain.place)
  }
  return true
}
