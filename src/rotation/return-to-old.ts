import type { Board } from '#rotation/board'
import type { Exchange } from '#rotation/exchange'
import { away } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { quietExchanges } from '#rotation/quiet-exchanges'
import { roleChangesNear } from '#rotation/role-changes-near'

/**
 * Brings the plan on the board back to an older one wherever that makes it no less fair, with few changes of role. Every
 * rule is kept. `most`: exchanges looked at. Returns how many were made.
 */
export function returnToOld(
  board: Board,
  old: RotationPlan,
  wish: { readonly restLimit: number | null; readonly most: number },
): number {
  const before = (turn: number, player: number) => old[turn]?.[player] ?? away
  const at = (turn: number, player: number) => board.place[turn * board.players + player] as number
  const players = Array.from({ length: board.players }, (_, player) => player)
  return quietExchanges({
    ...wish,
    board,
    mayTouchSituations: true,
    partners: (turn, player) => {
      const wanted = before(turn, player)
      const mine = at(turn, player)
      if (wanted === away || mine === away || mine === wanted) return []
      return players.filter((other) => at(turn, other) === wanted && before(turn, other) !== wanted)
    },
    costNear: (exchange) => 2 * differing(exchange) + roleChangesNear(board, exchange),
  })

  function differing({ one, other, turns }: Exchange): number {
    let count = 0
    for (const turn of turns)
      for (const player of [one, other])
        if (before(turn, player) !== away && at(turn, player) !== before(turn, player)) count += 1
    return count
  }
}
