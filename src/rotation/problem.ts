import type { Situation } from '#exposure/column'

/** Roles that have a seat; rest has none. */
export const seatRoles = ['attack', 'defend', 'keep'] as const
export type SeatRole = (typeof seatRoles)[number]

/** Everything a player gets a figure for: the four roles, then the three situations. */
export const rotationColumns = [
  'attack',
  'defend',
  'keep',
  'rest',
  'outnumbering',
  'level',
  'outnumbered',
] as const satisfies readonly (SeatRole | 'rest' | Situation)[]
export type RotationColumn = (typeof rotationColumns)[number]
/** A figure in seconds for each column. */
export type ColumnSeconds = Readonly<Record<RotationColumn, number>>

/** How many seats of each role a station has. */
export type StationSeats = Readonly<Record<SeatRole, number>>

/** Players, rounds and turns are named by their place in their list, from 0. */
export type RotationPlayer = {
  readonly id: string
  readonly keeps: boolean
  /** For each turn, whether the player is there for it. */
  readonly present: readonly boolean[]
  /** What is carried in from earlier sessions: share − fair share. */
  readonly gap: ColumnSeconds
  /** Most turns with a place; missing or null: as many as come. */
  readonly mostTurns?: number | null
  /** Never has a place in two turns running. */
  readonly restsAfterTurn?: boolean
  /** Part of its even share of playing that is due, by agreement; the rest of it is due as waiting. Missing: all. */
  readonly dueShare?: number
  /** In a turn in which only one rests it is never that one. */
  readonly neverRestsAlone?: boolean
  /** Turns in a row that the player has rested when the first turn begins. */
  readonly restedBefore?: number
}

export type RotationRound = {
  readonly id: string
  readonly turnSeconds: number
  /** A station keeps its keeper through the round, while that player is there. */
  readonly keepersStay: boolean
  /** Who alone may attack and who alone may defend; null: anyone. */
  readonly sides: { readonly attack: readonly number[]; readonly defend: readonly number[] } | null
  /** Nobody should attack or defend twice running while others wait: a wish, kept where it costs nothing. */
  readonly isSpread?: boolean
}

export type RotationTurn = {
  readonly round: number
  readonly seconds: number
  readonly stations: readonly StationSeats[]
}

/** `place`: see place.ts. */
export type FixedPlace = { readonly turn: number; readonly player: number; readonly place: number }

/** What a rotation is asked for. `restLimit`: most turns in a row that anyone may rest; null: no such rule. */
export type RotationProblem = {
  readonly players: readonly RotationPlayer[]
  readonly rounds: readonly RotationRound[]
  readonly turns: readonly RotationTurn[]
  readonly restLimit: number | null
  readonly apart: readonly (readonly [number, number])[]
  readonly fixed: readonly FixedPlace[]
  /** Pairs that should be on one side as often as costs nothing: a wish, not a rule. */
  readonly together?: readonly (readonly [number, number])[]
}

/** Players who are there for a turn. */
export function presentAt(problem: RotationProblem, turn: number): readonly number[] {
  return problem.players.flatMap((player, index) => (player.present[turn] ? [index] : []))
}

/** Whether in a turn there is a place for all who are there but one. */
export function restsAlone(problem: RotationProblem, turn: number): boolean {
  const own = problem.turns[turn]
  return own !== undefined && presentAt(problem, turn).length - allSeatsOfTurn(own) === 1
}

export function seatsOfTurn(turn: RotationTurn, role: SeatRole): number {
  return turn.stations.reduce((sum, station) => sum + station[role], 0)
}

export function allSeatsOfTurn(turn: RotationTurn): number {
  return seatRoles.reduce((sum, role) => sum + seatsOfTurn(turn, role), 0)
}
