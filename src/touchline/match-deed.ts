import type { Seconds } from '#common/time'
import type { PlannedSpell } from '#lineup/match-plan'
import type { Line } from '#match/match'
import type { SharedDeed } from '#pitch/pitch-event'
import type { PlayerId } from '#squad/player'

/** A player and where it plays. */
export type PlacedPlayer = { readonly playerId: PlayerId; readonly line: Line }

/**
 * One thing tapped beside a match. Seconds are playing time from the first kick-off, breaks left out, as in the plan.
 * A change of the plan that is neither tapped nor called off counts as made at its time. What a deed needs to be
 * understood it carries itself.
 */
export type MatchDeed =
  | SharedDeed
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
  /** Off without anybody coming on: for good (null), or for so many seconds of playing time. */
  | { readonly kind: 'sentOff'; readonly playerId: PlayerId; readonly seconds: Seconds | null }
  /** A goal of the squad (ours) or of the others; never whose. Only where the club counts them. */
  | { readonly kind: 'goal'; readonly side: 'ours' | 'theirs' }
  /** The match is over. */
  | { readonly kind: 'fullTime' }
