import type { Proof } from '#common/proof'
import type { Line } from '#match/match'

/** The line of each player in each window: `[player][window]`. Null: off, or not there. */
export type LineUpPlan = readonly (readonly (Line | null)[])[]

/** The goals in their order; each is judged among the plans that are best in those before it. */
export const lineUpGoals = ['promise', 'minutes', 'goal', 'starts', 'lines', 'changes'] as const
export type LineUpGoal = (typeof lineUpGoals)[number]

/**
 * What a plan comes to, goal by goal; less is better.
 * - promise: seconds short of the least time, over all players.
 * - minutes: sum of (owed.playSeconds + fair seconds − seconds)², seconds².
 * - goal: the same of time in goal, over those who may keep.
 * - starts: sum of (owed.starts + fair part of a start − start)²; 0 without a start.
 * - lines: seconds in open lines beyond the room that a player has there (`roomInLines`): where it had more than an even
 *   share of that line over the term; and for each move of a player from line to line inside a period as much as ten
 *   minutes beyond it (`movePrice`): who stays on stays where it is.
 * - changes: players coming on inside periods.
 */
export type LineUpValues = Readonly<Record<LineUpGoal, number>>

/** A finished line-up with the proof of each goal. A bound holds given the values of the goals before. */
export type LineUp = {
  readonly plan: LineUpPlan
  readonly proofs: Readonly<Record<LineUpGoal, Proof>>
}
