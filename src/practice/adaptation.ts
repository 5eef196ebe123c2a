import type { Ending } from '#practice/design'

/** What a coach turns to make a practice harder or easier: the space, the task, the equipment, the people. */
export const adaptationKinds = ['space', 'task', 'equipment', 'people'] as const
export type AdaptationKind = (typeof adaptationKinds)[number]

/** Whom it makes it harder or easier for. */
export type AdaptationFor = 'attack' | 'defend' | 'keep' | 'all'

/** Place of a round in the design's list, from 0; null: every round but the free game. */
export type RoundRef = number | null

/** One thing that is done to a design. */
export type DesignChange =
  /** The whole area times these, 1 leaving a side as it is. */
  | { readonly what: 'area'; readonly lengthTimes: number; readonly widthTimes: number }
  /** So many places more, or fewer, in each area of the round. */
  | {
      readonly what: 'places'
      readonly round: RoundRef
      readonly attack: number
      readonly defend: number
      readonly keep: number
    }
  /** So many areas like the round's last more, or fewer from its end. */
  | { readonly what: 'areas'; readonly round: RoundRef; readonly by: number }
  /** Turns of the round so many times as long, and as many. */
  | {
      readonly what: 'turns'
      readonly round: RoundRef
      readonly secondsTimes: number
      readonly countTimes: number
    }
  /** One way more for a turn to end and count; in place of one with the same id. */
  | { readonly what: 'ending'; readonly round: RoundRef; readonly ending: Ending }
  /** What holds in play and no number shows. */
  | { readonly what: 'condition'; readonly round: RoundRef; readonly words: string }

/** A labelled change of a design: what it makes harder or easier, for whom, and why. */
export type Adaptation = {
  readonly id: string
  readonly kind: AdaptationKind
  readonly title: string
  readonly makes: 'harder' | 'easier'
  readonly forWhom: AdaptationFor
  readonly why: string
  /** At least one; made in this order. */
  readonly changes: readonly DesignChange[]
}
