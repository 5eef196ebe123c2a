import type { Seconds } from '#common/time'
import type { PlannedSpell } from '#lineup/match-plan'
import type { Line } from '#match/match'
import type { PlayerId } from '#squad/player'
import type { RegisterState } from '#squad/register'

/** A player and where it plays. */
export type PlacedPlayer = { readonly playerId: PlayerId; readonly line: Line }

/**
 * One thing tapped beside a match. Seconds are playing time from the first kick-off, breaks left out, as in the plan.
 * A change of the plan that is neither tapped nor called off counts as made at its time. What a deed needs to be
 * understood it carries itself.
 */
export type MatchDeed =
  /** Kick-off of a period (from 0), with who is on; one beyond the plan's is an extra period. */
  | { readonly kind: 'kickOff'; readonly period: number; readonly on: readonly PlacedPlayer[] }
  /** The whistle that ends the running period. */
  | { readonly kind: 'periodEnd'; readonly period: number }
  /** The clock stands: an injury, a thunderstorm. */
  | { readonly kind: 'clockStops' }
  | { readonly kind: 'clockGoesOn' }
  /** The plan's change at `due` was made now: late, or early. */
  | { readonly kind: 'changeMade'; readonly due: Seconds; readonly on: readonly PlacedPlayer[] }
  /** The plan's change at `due` is not made. */
  | { readonly kind: 'changeDropped'; readonly due: Seconds }
  /** From now on these are on, and nobody else: a change that was not planned, or other places. */
  | { readonly kind: 'places'; readonly on: readonly PlacedPlayer[] }
  /** The plan from `from` on is this. */
  | {
      readonly kind: 'replan'
      readonly from: Seconds
      readonly spells: readonly PlannedSpell[]
      readonly sentence: string
    }
  /** "gone": left, or did not come. Out for today (a knock to the head) is taken back by a second answer only. */
  | {
      readonly kind: 'register'
      readonly playerId: PlayerId
      readonly state: RegisterState | 'gone'
      readonly secondAnswer?: boolean
    }
  /** A new face, here from now on. */
  | { readonly kind: 'guest'; readonly playerId: PlayerId; readonly name: string }
  /** Off without anybody coming on: for good (null), or for so many seconds of playing time. */
  | { readonly kind: 'sentOff'; readonly playerId: PlayerId; readonly seconds: Seconds | null }
  /** A goal of the squad (ours) or of the others; never whose. Only where the club counts them. */
  | { readonly kind: 'goal'; readonly side: 'ours' | 'theirs' }
  /** The match is over. */
  | { readonly kind: 'fullTime' }
  /** As if the other event had never been tapped. An undo can be undone. */
  | { readonly kind: 'undo'; readonly undoes: string; readonly secondAnswer?: boolean }
