import type { Board } from '#rotation/board'
import type { Exchange } from '#rotation/exchange'
import { type KeeperChain, keeperChains } from '#rotation/keeper-chains'
import { restLimitOf } from '#rotation/limits'
import { resting } from '#rotation/place'

/** Turns beyond `limit` that a player rests in a row, over all its runs. */
function restExcess(board: Board, player: number, asked: number): number {
  const own = board.problem.players[player]
  const limit = restLimitOf(own, asked)
  let excess = 0
  let run = own?.restedBefore ?? 0
  for (let at = player; at < board.place.length; at += board.players) {
    run = board.place[at] === resting ? run + 1 : 0
    if (run > limit) excess += 1
  }
  return excess
}

/** Turns by which a player breaks what it agreed to: at most so many, and a wait after each. */
function ownExcess(board: Board, player: number): number {
  const own = board.problem.players[player]
  if (own?.mostTurns == null && !own?.restsAfterTurn) return 0
  let turns = 0
  let running = 0
  for (let at = player, isOn = false; at < board.place.length; at += board.players) {
    const wasOn = isOn
    isOn = (board.place[at] as number) > resting
    if (isOn) turns += 1
    if (isOn && wasOn && own.restsAfterTurn) running += 1
  }
  return running + (own.mostTurns == null ? 0 : Math.max(0, turns - own.mostTurns))
}

/** Turns by which a player breaks the limit on rests (null: none), and its own limits. */
export function limitExcess(board: Board, player: number, restLimit: number | null): number {
  return (restLimit === null ? 0 : restExcess(board, player, restLimit)) + ownExcess(board, player)
}

export function allLimitExcess(board: Board, restLimit: number | null): number {
  let excess = 0
  for (let player = 0; player < board.players; player += 1) excess += limitExcess(board, player, restLimit)
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
