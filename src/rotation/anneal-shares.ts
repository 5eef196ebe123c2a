import { type AnnealWish, restore } from '#rotation/anneal'
import { type Board, columnsOfBoard } from '#rotation/board'
import { allLimitExcess, type ChainTable, chainTable } from '#rotation/board-rules'
import { away, resting } from '#rotation/place'

/** How often (of 1) each kind is tried; the rest are exchanges in one turn. */
const tries = { twoTurns: 0.25, stretch: 0.1, duty: 0.08 }
const longestStretch = 6
const restRole = 3
const noise = 1e-7
const clockBatch = 4096

/**
 * Makes the four roles more even by exchanges that raise the goal at first and less and less so later (S. Kirkpatrick,
 * C. D. Gelatt & M. P. Vecchi, "Optimization by simulated annealing", Science 220 (1983) 671-680): two players in one
 * turn, in two, in a stretch of turns, or a keeper with another for all of its duty. Every rule holds throughout, but
 * rests beyond the limit that stand at the start are reduced first. The same search as anneal.ts makes for any goal,
 * several times as fast because it keeps nothing but what this goal needs. The best plan met is left on the board.
 */
export function annealShares(board: Board, wish: Omit<AnnealWish, 'goal'>): void {
  const state = stateOf(board, wish.restLimit)
  const { chance } = wish
  const base = meanSquare(board)
  const heat = base * (wish.heat ?? 1)
  const penalty = 20 * base
  let best: { readonly value: number; readonly excess: number; readonly place: Int16Array } = {
    value: 0,
    excess: state.excess,
    place: state.place.slice(),
  }
  let isAtBest = true
  for (let tried = 0; tried < wish.tries; tried += 1) {
    if (tried % clockBatch === 0 && !wish.mayGoOn()) break
    if (wish.stopWhenMended && state.excess === 0) break
    const [value, excess] = [state.value, state.excess]
    state.made.length = 0
    if (!propose(state, chance)) {
      undo(state, value, excess)
      continue
    }
    const cost = state.value - value + penalty * (state.excess - excess)
    const temperature = heat * (1 - tried / wish.tries) ** 3
    const isTaken =
      (state.excess <= excess || excess > 0) &&
      (cost <= noise || chance() < Math.exp(-cost / Math.max(temperature, 1e-12)))
    if (!isTaken) {
      undo(state, value, excess)
      continue
    }
    const isBetter =
      state.excess < best.excess || (state.excess === best.excess && state.value < best.value - noise)
    if (isBetter) {
      best = { ...best, value: state.value, excess: state.excess }
      isAtBest = true
    } else if (isAtBest) {
      // The best plan is left only now: this is the time to write it down.
      best = { ...best, place: placeBefore(state) }
      isAtBest = false
    }
  }
  restore(board, isAtBest ? state.place : best.place)
}

type State = {
  readonly board: Board
  readonly place: Int16Array
  /** Player × 4 + role: the gap afterwards. */
  readonly left: Float64Array
  readonly chains: ChainTable
  /** Turn × places + place: 1 where a keeper who stays belongs. */
  readonly isChained: Uint8Array
  readonly limit: number | null
  /** Against the plan at the start. */
  value: number
  excess: number
  /** The exchanges of the try that is being made: turn, one, other, and so on. */
  readonly made: number[]
}

function stateOf(board: Board, limit: number | null): State {
  const chains = chainTable(board)
  const isChained = new Uint8Array(board.turns * board.places)
  chains.forEach((own, turn) => {
    for (const place of own.keys()) isChained[turn * board.places + place] = 1
  })
  const left = new Float64Array(board.players * 4)
  for (let player = 0; player < board.players; player += 1)
    for (let role = 0; role < 4; role += 1)
      left[player * 4 + role] = board.left[player * columnsOfBoard + role] as number
  const excess = allLimitExcess(board, limit)
  return { board, place: board.place.slice(), left, chains, isChained, limit, value: 0, excess, made: [] }
}

function meanSquare(board: Board): number {
  return (board.seconds.reduce((sum, own) => sum + own, 0) / Math.max(1, board.turns)) ** 2
}

/** Makes one try; false when a rule forbids it, and then what was made of it must be undone. */
function propose(state: State, chance: () => number): boolean {
  const { players, turns } = state.board
  const turn = Math.floor(chance() * turns)
  const one = Math.floor(chance() * players)
  const other = Math.floor(chance() * players)
  if (one === other) return false
  const kind = chance()
  if (kind < tries.duty) return exchangeDuty(state, turn, one, other)
  if (!mayExchange(state, turn, one, other)) return false
  const [mine, theirs] = [
    state.place[turn * players + one] as number,
    state.place[turn * players + other] as number,
  ]
  if (isHeld(state, turn, mine) || isHeld(state, turn, theirs)) return false
  exchange(state, turn, one, other)
  if (kind < tries.duty + tries.twoTurns) {
    const second = Math.floor(chance() * turns)
    return second !== turn && exchangeFree(state, second, one, other)
  }
  if (kind < tries.duty + tries.twoTurns + tries.stretch) {
    const last = Math.min(turns - 1, turn + 1 + Math.floor(chance() * longestStretch))
    for (let at = turn + 1; at <= last; at += 1) {
      const same = state.place[at * players + one] === state.place[at * players + other]
      if (!same && !exchangeFree(state, at, one, other)) return false
    }
  }
  return true
}

/** Whether a place of a turn belongs to a keeper who stays, who only changes for the whole of its duty. */
function isHeld(state: State, turn: number, place: number): boolean {
  return place > resting && state.isChained[turn * state.board.places + place] === 1
}

function exchangeFree(state: State, turn: number, one: number, other: number): boolean {
  const { players } = state.board
  if (!mayExchange(state, turn, one, other)) return false
  if (isHeld(state, turn, state.place[turn * players + one] as number)) return false
  if (isHeld(state, turn, state.place[turn * players + other] as number)) return false
  exchange(state, turn, one, other)
  return true
}

function exchangeDuty(state: State, turn: number, one: number, other: number): boolean {
  const { board, place, chains } = state
  const own = place[turn * board.players + one] as number
  const chain = chains[turn]?.get(own)
  if (!chain || own <= resting) return false
  for (const at of chain.turns) {
    if (place[at * board.players + one] !== chain.place) continue
    if (!mayExchange(state, at, one, other)) return false
    if (isHeld(state, at, place[at * board.players + other] as number)) return false
    exchange(state, at, one, other)
  }
  return staysKept(state, chain)
}

function staysKept(
  { board, place }: State,
  chain: { readonly place: number; readonly turns: readonly number[] },
): boolean {
  let before = -1
  for (const turn of chain.turns) {
    const base = turn * board.players
    if (before >= 0 && place[base + before] === chain.place) continue
    if (before >= 0 && (place[base + before] as number) >= resting) return false
    before = -1
    for (let player = 0; player < board.players; player += 1)
      if (place[base + player] === chain.place) before = player
  }
  return true
}

function mayExchange({ board, place }: State, turn: number, one: number, other: number): boolean {
  const { players, places, may } = board
  const base = turn * players
  const mine = place[base + one] as number
  const theirs = place[base + other] as number
  if (mine === away || theirs === away || mine === theirs) return false
  if (may[(base + one) * places + theirs] === 0 || may[(base + other) * places + mine] === 0) return false
  return !meets(board, place, base, one, theirs, other) && !meets(board, place, base, other, mine, one)
}

function meets(
  board: Board,
  place: Int16Array,
  base: number,
  player: number,
  wanted: number,
  but: number,
): boolean {
  const station = board.station[wanted] as number
  if (station < 0) return false
  for (const partner of board.partners[player] as readonly number[]) {
    if (partner === but) continue
    const theirs = place[base + partner] as number
    if (theirs > resting && board.station[theirs] === station) return true
  }
  return false
}

function exchange(state: State, turn: number, one: number, other: number): void {
  const { board, place, left, limit } = state
  const { players } = board
  const [mine, theirs] = [turn * players + one, turn * players + other]
  const [kept, given] = [place[mine] as number, place[theirs] as number]
  const [a, b] = [board.role[kept] as number, board.role[given] as number]
  state.made.push(turn, one, other)
  if (a !== b) {
    const seconds = board.seconds[turn] as number
    const [oneA, oneB, otherA, otherB] = [one * 4 + a, one * 4 + b, other * 4 + a, other * 4 + b]
    state.value +=
      4 * seconds * seconds +
      2 *
        seconds *
        ((left[oneB] as number) -
          (left[oneA] as number) +
          (left[otherA] as number) -
          (left[otherB] as number))
    left[oneA] = (left[oneA] as number) - seconds
    left[oneB] = (left[oneB] as number) + seconds
    left[otherA] = (left[otherA] as number) + seconds
    left[otherB] = (left[otherB] as number) - seconds
    if (limit !== null && (a === restRole || b === restRole)) {
      const rests = restedMore(state, turn, a === restRole ? other : one, limit)
      const plays = restedMore(state, turn, a === restRole ? one : other, limit)
      state.excess += rests - plays
    }
  }
  place[mine] = given
  place[theirs] = kept
}

/** Rests beyond the limit that a player has more when it rests in a turn than when it does not. */
function restedMore({ board, place }: State, turn: number, player: number, limit: number): number {
  const { players } = board
  let before = 0
  for (let at = (turn - 1) * players + player; at >= 0 && place[at] === resting; at -= players) before += 1
  let after = 0
  for (let at = (turn + 1) * players + player; at < place.length && place[at] === resting; at += players)
    after += 1
  return Math.max(0, before + after + 1 - limit) - Math.max(0, before - limit) - Math.max(0, after - limit)
}

/** Takes back the exchanges of a try. */
function undo(state: State, value: number, excess: number): void {
  const { made } = state
  for (let at = made.length - 3; at >= 0; at -= 3) {
    const [turn, one, other] = [made[at] as number, made[at + 1] as number, made[at + 2] as number]
    const { board, place, left } = state
    const [mine, theirs] = [turn * board.players + one, turn * board.players + other]
    const [kept, given] = [place[mine] as number, place[theirs] as number]
    const [a, b] = [board.role[kept] as number, board.role[given] as number]
    const seconds = board.seconds[turn] as number
    if (a !== b) {
      left[one * 4 + a] = (left[one * 4 + a] as number) - seconds
      left[one * 4 + b] = (left[one * 4 + b] as number) + seconds
      left[other * 4 + a] = (left[other * 4 + a] as number) + seconds
      left[other * 4 + b] = (left[other * 4 + b] as number) - seconds
    }
    place[mine] = given
    place[theirs] = kept
  }
  state.value = value
  state.excess = excess
}

/** The places as they were before the exchanges of the last try. */
function placeBefore({ board, place, made }: State): Int16Array {
  const before = place.slice()
  for (let at = made.length - 3; at >= 0; at -= 3) {
    const base = (made[at] as number) * board.players
    const [mine, theirs] = [base + (made[at + 1] as number), base + (made[at + 2] as number)]
    const kept = before[mine] as number
    before[mine] = before[theirs] as number
    before[theirs] = kept
  }
  return before
}
