import type { Seconds } from '#common/time'
import type { DesignId, DesignRound, DesignSides } from '#practice/design'
import type { SeatRole, Station } from '#practice/turn'
import type { ColumnSeconds } from '#rotation/problem'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** One turn as it is to be played. Who is there and has no place waits. */
export type PlannedTurn = {
  /** Place of its round in the list of rounds, from 0. */
  readonly round: number
  readonly seconds: Seconds
  /** Nobody's time after it. */
  readonly gapSeconds: Seconds
  readonly stations: readonly Station[]
}

/**
 * What was agreed with a player and holds on the day, as this practice has it. Each part is missing where it was not
 * agreed, and false where the coach lets it go for this practice. No reason is known anywhere.
 */
export type AgreedToday = {
  /** Part of its even share of playing that is due. */
  readonly dueShare?: number
  /** Never attacks with the one side and defends with it in the same round, nor changes bibs: `side` says which. */
  readonly sameSide?: boolean
  /** In a turn in which only one waits it is another. */
  readonly neverWaitsAlone?: boolean
  /** Its places of a plan that was saved stay in every later one. */
  readonly planShownEarly?: boolean
  /** With whom it has its first turn on one side; null: nobody is named, or not in this practice. */
  readonly firstPartner?: PlayerId | null
}

/** Whom a plan counts on, and what holds for the player in this practice alone. */
export type PlannedPlayer = {
  readonly playerId: PlayerId
  /** May be put in goal, whatever this practice asks. */
  readonly keeps: boolean
  /**
   * Which of the two sides it wears the bib of; null: neutral, or there are no sides. Without sides, of somebody who
   * keeps one all the same: 0 attacks, 1 defends.
   */
  readonly side: 0 | 1 | null
  /** First and last turns it is there for, counted from 1, both included, in order. */
  readonly present: readonly (readonly [number, number])[]
  readonly notInGoal: boolean
  readonly waitsAfterEachTurn: boolean
  /** At most so many turns with a place; null: as many as come. */
  readonly mostTurns: number | null
  /** Carried in from the season: share − fair share. */
  readonly gap: ColumnSeconds
  /** Missing: nothing is agreed. */
  readonly agreed?: AgreedToday
}

/** A place that the coach holds fast. Turns, and areas, are counted from 1. */
export type PlanLock = {
  readonly turn: number
  readonly playerId: PlayerId
  readonly place: { readonly station: number; readonly role: SeatRole } | 'rest'
  /** Held by an agreement and not by the coach's hand: with a first partner, or as it was shown. */
  readonly agreed?: 'partner' | 'shown'
}

export type PlanRules = {
  /** Most turns in a row anyone may wait; null: no such rule. */
  readonly restLimit: number | null
  /** Nobody gets more than half as much again, or less than half, of the even share of attack or defence in one practice. */
  readonly isGentle: boolean
  /** Players keep their side for the whole practice and its role for the round. */
  readonly keepsSides: boolean
  /** Gaps of matches are carried in as well as those of practices; missing: no. */
  readonly countsMatches?: boolean
}

/** How fair it is, and that nothing fairer is possible, or how far off it may be. */
export type PlanProof = {
  /** For the coach. */
  readonly sentence: string
  readonly value: number
  readonly bound: number
  readonly proven: boolean
  /** The limit on waits in a row that the plan keeps. */
  readonly restLimitUsed: number | null
}

/** What is to be played in one practice: the rounds as adapted for the day, who is expected, who sits where. */
export type PracticePlan = {
  readonly design: {
    readonly id: DesignId | null
    readonly name: string
    readonly themeId: ThemeId | null
    readonly sides: DesignSides | null
    readonly rounds: readonly DesignRound[]
    /** Labels of the changes made to the design for the day; missing: none. */
    readonly changes?: readonly string[]
  }
  readonly players: readonly PlannedPlayer[]
  readonly rules: PlanRules
  /** Never at one area in one turn. For coaches' eyes only. */
  readonly apart: readonly (readonly [PlayerId, PlayerId])[]
  /** Kept apart at other times, and let meet in this practice on purpose; missing: nobody. For coaches' eyes only. */
  readonly mayMeet?: readonly (readonly [PlayerId, PlayerId])[]
  /** On one side of one area as often as it costs nothing. For coaches' eyes only. */
  readonly together: readonly (readonly [PlayerId, PlayerId])[]
  readonly locks: readonly PlanLock[]
  readonly turns: readonly PlannedTurn[]
  readonly proof: PlanProof
}

/** What is asked of a plan: everything but who sits where. */
export type PlanRequest = Omit<PracticePlan, 'turns' | 'proof'>
