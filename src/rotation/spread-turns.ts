import type { Board } from '#rotation/board'
import { quietExchanges } from '#rotation/quiet-exchanges'
import { roleChangesNear } from '#rotation/role-changes-near'

/**
 * In rounds that ask for it, lets nobody attack or defend twice running while others wait, wherever that makes the plan
 * no less fair, in roles and in situations, and costs no change of role. Returns how many exchanges were made.
 */
export function spreadTurns(
  board: Board,
  wish: { readonly restLimit: number | null; readonly most: number },
): number {
  const isSpread = board.problem.rounds.map((round) => round.isSpread === true)
  if (!isSpread.includes(true)) return 0
  const players = Array.from({ length: board.players }, (_, player) => player)
  const at = (turn: number, player: number) => board.place[turn * board.players + player] as number
  const plays = (turn: number, player: number) =>
    (board.role[at(turn, player)] ?? 3) < 2 && at(turn, player) > 0

  return quietExchanges({
    ...wish,
    board,
    mayTouchSituations: false,
    partners: (turn, player) => {
      if (!runsOn(turn, player) && !runsOn(turn + 1, player)) return []
      return players.filter((other) => at(turn, other) >= 0 && !plays(turn, other))
    },
    costNear: (exchange) => {
      let running = 0
      let counted = -1
      for (const turn of exchange.turns) {
        for (let own = Math.max(turn, counted + 1); own <= turn + 1; own += 1) {
          if (runsOn(own, exchange.one)) running += 1
          if (runsOn(own, exchange.other)) running += 1
          counted = own
        }
      }
      return 1000 * roleChangesNear(board, exchange) + running
    },
  })

  /** Whether a player attacks or defends in this turn and did in the one before, in a round that asks for more space. */
  function runsOn(turn: number, player: number): boolean {
    if (turn < 1 || turn >= board.turns || board.roundOf[turn] !== board.roundOf[turn - 1]) return false
    if (!isSpread[board.roundOf[turn] as number]) return false
    return plays(turn, player) && plays(turn - 1, player)
  }
}
