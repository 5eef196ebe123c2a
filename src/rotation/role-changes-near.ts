import type { Board } from '#rotation/board'
import type { Exchange } from '#rotation/exchange'
import { resting } from '#rotation/place'

/** Changes of role, of the two players of an exchange, into its turns and out of them; each counted once. */
export function roleChangesNear(board: Board, { one, other, turns }: Exchange): number {
  let changes = 0
  let counted = -1
  for (const turn of turns) {
    for (let at = Math.max(turn, counted + 1); at <= turn + 1; at += 1) {
      changes += changesRole(board, one, at) + changesRole(board, other, at)
      counted = at
    }
  }
  return changes
}

/** Whether a player has another role than in the turn before, in the same round; rests are none. */
function changesRole(board: Board, player: number, turn: number): 0 | 1 {
  if (turn < 1 || turn >= board.turns || board.roundOf[turn] !== board.roundOf[turn - 1]) return 0
  const place = board.place[turn * board.players + player] as number
  const before = board.place[(turn - 1) * board.players + player] as number
  return place > resting && before > resting && board.role[place] !== board.role[before] ? 1 : 0
}
