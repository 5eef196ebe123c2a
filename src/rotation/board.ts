import { situations } from '#exposure/column'
import { fairSeconds } from '#rotation/fair-seconds'
import { mayTakeIn } from '#rotation/may-take'
import { away, resting, roleIndexOf, situationOf, stationOf } from '#rotation/place'
import type { RotationPlan } from '#rotation/plan'
import { type ColumnSeconds, type RotationProblem, seatRoles } from '#rotation/problem'

/**
 * A plan laid out for a search that tries exchanges by the million: flat arrays, sums kept. `place[turn × players +
 * player]`; `left[player × 7 + column]` is the gap afterwards (attack, defend, keep, rest, three situations).
 */
export type Board = {
  readonly problem: RotationProblem
  readonly players: number
  readonly turns: number
  readonly place: Int16Array
  readonly left: Float64Array
  /** How often two were on one side of one station, player × players + other. */
  readonly together: Int16Array
  readonly seconds: Float64Array
  readonly roundOf: Int16Array
  /** Turn × places + place: 0-2 the situation it brings, −1 none. */
  readonly situation: Int8Array
  /** (Turn × players + player) × places + place: 1 where the player may take it. */
  readonly may: Uint8Array
  readonly places: number
  /** Role by place: attack 0, defend 1, keep 2, rest 3. */
  readonly role: Int8Array
  /** Station by place; −1 for rest. */
  readonly station: Int8Array
  readonly partners: readonly (readonly number[])[]
  /** Player × players + other: 1 where the two should be on one side; null: no such wish. */
  readonly wished: Uint8Array | null
}

export const columnsOfBoard = 7

export function layOut(problem: RotationProblem, plan: RotationPlan): Board {
  const players = problem.players.length
  const turns = problem.turns.length
  const places = 1 + 3 * Math.max(0, ...problem.turns.map(({ stations }) => stations.length))
  const codes = Array.from({ length: places }, (_, place) => place)
  const partners: number[][] = problem.players.map(() => [])
  for (const [one, other] of problem.apart) {
    partners[one]?.push(other)
    partners[other]?.push(one)
  }
  const mayTake = mayTakeIn(problem)
  const board: Board = {
    problem,
    players,
    turns,
    places,
    partners,
    wished: wishedPairs(problem),
    place: new Int16Array(turns * players).fill(away),
    left: gapsBefore(problem),
    together: new Int16Array(players * players),
    seconds: Float64Array.from(problem.turns.map(({ seconds }) => seconds)),
    roundOf: Int16Array.from(problem.turns.map(({ round }) => round)),
    role: Int8Array.from(codes.map(roleIndexOf)),
    station: Int8Array.from(codes.map((place) => (place === resting ? -1 : stationOf(place)))),
    situation: Int8Array.from(
      problem.turns.flatMap(({ stations }) =>
        codes.map((place) => {
          const situation = situationOf(stations, place)
          return situation === null ? -1 : situations.indexOf(situation)
        }),
      ),
    ),
    may: Uint8Array.from(
      problem.turns.flatMap((_, turn) =>
        problem.players.flatMap((_, player) => codes.map((place) => (mayTake(turn, player, place) ? 1 : 0))),
      ),
    ),
  }
  plan.forEach((own, turn) => {
    own.forEach((place, player) => {
      if (place !== away) put(board, turn, player, place)
    })
  })
  return board
}

function wishedPairs({ players, together = [] }: RotationProblem): Uint8Array | null {
  if (together.length === 0) return null
  const wished = new Uint8Array(players.length ** 2)
  for (const [one, other] of together) {
    wished[one * players.length + other] = 1
    wished[other * players.length + one] = 1
  }
  return wished
}

function gapsBefore(problem: RotationProblem): Float64Array {
  const due = fairSeconds(problem)
  const columns = [...seatRoles, 'rest', ...situations] as const
  return Float64Array.from(
    problem.players.flatMap((player, index) =>
      columns.map((column) => player.gap[column] - (due[index] as ColumnSeconds)[column]),
    ),
  )
}

/** Gives a place to a player who has none in this turn yet. */
function put(board: Board, turn: number, player: number, place: number): void {
  board.place[turn * board.players + player] = place
  book(board, turn, player, 1)
  countTogether(board, turn, player, 1)
}

/** Books the place that a player has in a turn, or (−1) takes it out of the sums again. */
export function book(board: Board, turn: number, player: number, sign: 1 | -1): void {
  const place = board.place[turn * board.players + player] as number
  const base = player * columnsOfBoard
  const seconds = sign * (board.seconds[turn] as number)
  const role = base + (board.role[place] as number)
  board.left[role] = (board.left[role] as number) + seconds
  const situation = board.situation[turn * board.places + place] as number
  if (situation >= 0)
    board.left[base + 4 + situation] = (board.left[base + 4 + situation] as number) + seconds
}

/** Counts those on the player's side in a turn, or (−1) takes them out again. */
export function countTogether(board: Board, turn: number, player: number, sign: 1 | -1): void {
  const { place, players, together } = board
  const own = place[turn * players + player] as number
  if (own <= resting || board.role[own] === 2) return
  for (let other = 0; other < players; other += 1) {
    if (other === player || place[turn * players + other] !== own) continue
    const [to, fro] = [player * players + other, other * players + player]
    together[to] = (together[to] as number) + sign
    together[fro] = (together[fro] as number) + sign
  }
}

export function planOf(board: Board): RotationPlan {
  return Array.from({ length: board.turns }, (_, turn) => [
    ...board.place.subarray(turn * board.players, (turn + 1) * board.players),
  ])
}
