import type { PlannedTurn } from '#planning/practice-plan'
import type { SeatRole, Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'

/** Milliseconds since 1970 in UTC, by the phone's clock set right by the server's. */
export type EpochMs = number

/** How a turn ended in one area; `endingId` names one of the round's endings, null: nothing that counts. */
export type AreaEnding = {
  /** From 0. */
  readonly station: number
  readonly endingId: string | null
  /** Points won, and by which side; the bibs where there are sides, else the role. */
  readonly points: number
  readonly side: 0 | 1 | 'attack' | 'defend' | null
}

/** What is tapped of any session, practice or match. */
export type SharedDeed =
  /**
   * "gone": left, or did not come. `secondAnswer`: with "here", the book's own "out for today" is taken back; a second question was asked and answered.
   */
  | {
      readonly kind: 'register'
      readonly playerId: PlayerId
      readonly state: RegisterState | 'gone'
      readonly secondAnswer?: boolean
    }
  /** A new face, here from now on. */
  | { readonly kind: 'guest'; readonly playerId: PlayerId; readonly name: string }
  /**
   * As if the other event had never been tapped. An undo can be undone. To undo that somebody is out for today takes
   * `secondAnswer`: a second question was asked and answered.
   */
  | { readonly kind: 'undo'; readonly undoes: string; readonly secondAnswer?: boolean }

/**
 * One thing tapped at the pitch. Turns and rounds are places in the plan's lists, from 0. What a deed needs to be
 * understood (who sat where) it carries itself: two phones may have planned anew at the same moment.
 */
export type Deed =
  | SharedDeed
  /** Practice time counts from here; what was tapped before holds from its first second. */
  | { readonly kind: 'begin' }
  /** The turns from `fromTurn` on are these. */
  | {
      readonly kind: 'replan'
      readonly fromTurn: number
      readonly turns: readonly PlannedTurn[]
      readonly sentence: string
    }
  /** The round is over, its first so many turns were played as planned: one tap. */
  | { readonly kind: 'roundDone'; readonly round: number; readonly turns: readonly PlannedTurn[] }
  | { readonly kind: 'turnStart'; readonly turn: number; readonly stations: readonly Station[] }
  /** During the turn that the event `start` opened: from this second on these are the places. */
  | { readonly kind: 'change'; readonly start: string; readonly stations: readonly Station[] }
  | { readonly kind: 'turnEnd'; readonly start: string; readonly endings: readonly AreaEnding[] }
  /** What a side won in the balls of a round that were not tapped one by one, in all: the last that was tapped holds. */
  | {
      readonly kind: 'points'
      readonly round: number
      readonly side: 0 | 1 | 'attack' | 'defend'
      readonly points: number
    }
  /** A choice turn: who picked, and which of the round's sizes. */
  | {
      readonly kind: 'choice'
      readonly turn: number
      readonly by: 'attack' | 'coach'
      readonly size: number
      readonly side: 0 | 1 | null
    }
  | { readonly kind: 'passed'; readonly turn: number; readonly playerId: PlayerId; readonly role: SeatRole }
  /** Nothing was tapped: these turns, the first of the plan, were played as planned; who left did so after a turn. */
  | {
      readonly kind: 'asPlanned'
      readonly turns: readonly PlannedTurn[]
      /** `afterTurn` counts the turns of this deed that it was still there for. */
      readonly left?: readonly { readonly playerId: PlayerId; readonly afterTurn: number }[]
    }
  | { readonly kind: 'stop' }

/**
 * Written on a phone, once, and never changed. Ids are UUIDs of version 7 (RFC 9562). A practice's deeds, or, beside a
 * match, a match's.
 */
export type PitchEvent<Done = Deed> = {
  readonly id: string
  readonly deviceId: string
  readonly at: EpochMs
  readonly deed: Done
}
