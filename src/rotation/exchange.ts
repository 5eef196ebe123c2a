import { type Board, book, columnsOfBoard, countTogether } from '#rotation/board'
import { away, resting } from '#rotation/place'

/** Two players change places in each of some turns, in all of which both are there. */
export type Exchange = { readonly one: number; readonly other: number; readonly turns: readonly number[] }

/** Puts an exchange on the board, sums and all; in none of its turns have the two the same place. Done twice, it is undone. */
export function makeExchange(board: Board, { one, other, turns }: Exchange): void {
  for (const turn of turns) {
    const mine = turn * board.players + one
    const theirs = turn * board.players + other
    move(board, turn, { one, other }, -1)
    const kept = board.place[mine] as number
    board.place[mine] = board.place[theirs] as number
    board.place[theirs] = kept
    move(board, turn, { one, other }, 1)
  }
}

function move(board: Board, turn: number, pair: Pick<Exchange, 'one' | 'other'>, sign: 1 | -1): void {
  book(board, turn, pair.one, sign)
  book(board, turn, pair.other, sign)
  countTogether(board, turn, pair.one, sign)
  countTogether(board, turn, pair.other, sign)
}

/** Whether each could take the other's places by the rules of a single player, and no pair kept apart comes together. */
export function mayExchange(board: Board, { one, other, turns }: Exchange): boolean {
  const { place, players, places, may } = board
  for (const turn of turns) {
    const base = turn * players
    const mine = place[base + one] as number
    const theirs = place[base + other] as number
    if (mine === away || theirs === away || mine === theirs) return false
    if (may[(base + one) * places + theirs] === 0 || may[(base + other) * places + mine] === 0) return false
    if (meets(board, { turn, player: one, place: theirs, but: other })) return false
    if (meets(board, { turn, player: other, place: mine, but: one })) return false
  }
  return true
}

/** Whether a player would meet one of those it is kept apart from; `but`: the one it changes places with. */
function meets(
  board: Board,
  move: { readonly turn: number; readonly player: number; readonly place: number; readonly but: number },
): boolean {
  const station = board.station[move.place] as number
  if (station < 0) return false
  for (const partner of board.partners[move.player] as readonly number[]) {
    if (partner === move.but) continue
    const theirs = board.place[move.turn * board.players + partner] as number
    if (theirs > resting && board.station[theirs] === station) return true
  }
  return false
}

/** How much less even the four roles would be: change of the sum of squares, seconds². */
export function unfairnessChange(board: Board, exchange: Exchange): number {
  return squaresChange(board, exchange, (_, place) => board.role[place] as number)
}

/** The same for the three situations. */
export function situationChange(board: Board, exchange: Exchange): number {
  return squaresChange(board, exchange, (turn, place) => {
    const situation = board.situation[turn * board.places + place] as number
    return situation < 0 ? -1 : 4 + situation
  })
}

const mineBy = new Float64Array(columnsOfBoard)

function squaresChange(
  board: Board,
  { one, other, turns }: Exchange,
  columnOf: (turn: number, place: number) => number,
): number {
  mineBy.fill(0)
  for (const turn of turns) {
    const seconds = board.seconds[turn] as number
    const mine = columnOf(turn, board.place[turn * board.players + one] as number)
    const theirs = columnOf(turn, board.place[turn * board.players + other] as number)
    if (mine === theirs) continue
    if (mine >= 0) mineBy[mine] = (mineBy[mine] as number) - seconds
    if (theirs >= 0) mineBy[theirs] = (mineBy[theirs] as number) + seconds
  }
  let change = 0
  for (let column = 0; column < columnsOfBoard; column += 1) {
    const more = mineBy[column] as number
    if (more === 0) continue
    const mine = board.left[one * columnsOfBoard + column] as number
    const theirs = board.left[other * columnsOfBoard + column] as number
    change += 2 * more * (mine - theirs + more)
  }
  return change
}
