import type { Day } from '#common/time'
import type { Attendance } from '#fairness/account'
import type { SessionKind } from '#fairness/standing'
import type { FamilySentence, FamilyTopic } from '#family/family-sentences'
import type { MatchesPlayed } from '#family/matches-played'

/** What a child did: the topics of the sentences, and waiting for a turn. */
export type FamilyDoing = FamilyTopic | 'waiting'

/** Time in one role, to the nearest five minutes; zero: under five. */
export type TimeDone = { readonly doing: FamilyDoing; readonly minutes: number; readonly turns: number }

/** What a family reads about practices, or about matches. */
export type FamilyKind = {
  readonly kind: SessionKind
  readonly held: number
  readonly written: number
  /** Null: too little is written down to say anything but attendance and themes. */
  readonly said: {
    readonly sentences: readonly FamilySentence[]
    /** In the order of the topics; what the child never did is left out. */
    readonly did: readonly TimeDone[]
    /** Time the child was there for. */
    readonly minutesThere: number
    /** Null in practices, and where the child has not been on the pitch; pages confirmed long ago have none. */
    readonly matches?: MatchesPlayed | null | undefined
  } | null
  readonly attendance: readonly { readonly day: Day; readonly attendance: Attendance | null }[]
}

/** How the child met a theme. */
export type FamilyTheme = {
  readonly name: string
  /** Steps it stands under other themes. */
  readonly depth: number
  readonly missed: 'away' | 'noTurn' | null
  readonly practices: number
  readonly practicesPlayed: number
}

/** Letters of a coach's note. */
export const longestNote = 600

/** One child's page as a coach confirms it and the family then reads it. Nothing of any other child is in it. */
export type FamilyPage = {
  /** Of this form, so that pages confirmed long ago can still be read. */
  readonly version: 1
  /** The last day it counts. */
  readonly upTo: Day
  readonly kinds: readonly FamilyKind[]
  readonly themes: readonly FamilyTheme[]
  /** The coach's own words to the family; empty: none. */
  readonly note: string
}
