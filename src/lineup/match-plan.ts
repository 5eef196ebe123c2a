import type { Proof } from '#common/proof'
import type { Seconds } from '#common/time'
import type { LineUpGoal } from '#lineup/line-up'
import type { LineUpRules, Owed } from '#lineup/problem'
import type { FieldLine, LineWishes } from '#match/format/line-wish'
import type { LinePlaces, MatchFormat } from '#match/format/match-format'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'

/** A player's unbroken time in one line inside one period, in playing time from the first kick-off (breaks left out). */
export type PlannedSpell = {
  readonly playerId: PlayerId
  readonly line: Line
  readonly start: Seconds
  readonly end: Seconds
}

/** Whom the plan counts on. */
export type MatchPlanPlayer = {
  readonly playerId: PlayerId
  /** May be put in goal, and not set aside from it for this match. */
  readonly keeps: boolean
  /** In playing time; 0: from the start. Late: the first second it is there for. */
  readonly from: Seconds
  /** Null: to the end. */
  readonly to: Seconds | null
  readonly owed: Owed
  readonly wishes: LineWishes
  readonly metSeconds: Readonly<Record<FieldLine, Seconds>>
  /** Played on this day already, in other matches. */
  readonly playedToday: Seconds
}

/** A place that the coach holds fast, in playing time. */
export type MatchLock = {
  readonly playerId: PlayerId
  readonly start: Seconds
  readonly end: Seconds
  readonly place: Line | 'on' | 'off'
}

/** What is to be played in one match: who is on when, and in which line. */
export type MatchPlan = {
  /** As the match is played: the squad's format with the changes of the day made. */
  readonly format: MatchFormat
  readonly places: LinePlaces
  /** Second inside a period at which changes may be made, by period, in order, its ends left out. */
  readonly marks: readonly (readonly Seconds[])[]
  readonly players: readonly MatchPlanPlayer[]
  readonly rules: LineUpRules
  /** Part of its time that everyone is promised: the format's, else the policy's; null: no promise. */
  readonly leastShare: number | null
  /** Never on at the same time. For coaches' eyes only. */
  readonly apart: readonly (readonly [PlayerId, PlayerId])[]
  /** Kept apart on this day otherwise; the coach lets them meet in this match. */
  readonly mayMeet?: readonly (readonly [PlayerId, PlayerId])[]
  readonly together: readonly (readonly [PlayerId, PlayerId])[]
  readonly locks: readonly MatchLock[]
  /** What is owed from earlier matches is left out on purpose: everybody's is nothing. */
  readonly isAfresh?: boolean
  /** In the order of the players, each in order of time. */
  readonly spells: readonly PlannedSpell[]
  readonly proof: {
    /** For the coach. */
    readonly sentence: string
    readonly goals: Readonly<Record<LineUpGoal, Proof>>
  }
}

/** What is asked of a plan: everything but who plays where. */
export type MatchPlanRequest = Omit<MatchPlan, 'spells' | 'proof'>
