import type { Seconds } from '#common/time'
import type { ThemeId } from '#themes/theme'

export type DesignId = string

/** How many of each role one area takes at a time. */
export type AreaShape = { readonly attack: number; readonly defend: number; readonly keep: number }

/** What can end a turn, and what it is worth to the side that brought it about. */
export type Ending = {
  readonly id: string
  /** As a coach would say it: "Goal", "Won and carried over the line". */
  readonly words: string
  readonly side: 'attack' | 'defend'
  readonly points: number
}

/** A size that may be chosen in a choice turn; the harder, the more its points are worth. */
export type SizeChoice = { readonly shape: AreaShape; readonly points: number }

/** A round of a design: so many turns of one length, played in the areas named. */
export type DesignRound = {
  readonly title: string
  readonly turnCount: number
  /** Where `isUntilDead`: what a turn is expected to last. */
  readonly turnSeconds: Seconds
  /** Nobody's time between two turns of the round. */
  readonly gapSeconds: Seconds
  readonly stations: readonly AreaShape[]
  /** A turn lasts until the ball is dead, not until a time is up. */
  readonly isUntilDead?: boolean
  /** Whoever keeps goal in an area keeps it for the whole round. */
  readonly keepersStay?: boolean
  /** Before each turn the attackers, or the coach, pick its size; `stations` is the largest of them. */
  readonly choice?: { readonly by: 'attack' | 'coach'; readonly sizes: readonly SizeChoice[] } | null
  /** Empty or missing: nothing is counted. */
  readonly endings?: readonly Ending[]
  /** What holds in play and no number shows, as a coach would call it out: "Two touches each". Missing: nothing more. */
  readonly conditions?: readonly string[]
  /** The game with both sides whole that ends a practice: two equal turns, the roles swapped in the second. */
  readonly isFreeGame?: boolean
}

/** Two sides in their bibs for the whole practice. */
export type DesignSides = {
  /** Colours of the bibs. */
  readonly names: readonly [string, string]
  /** Whether attack and defence change over at a round's end. The first side attacks first. */
  readonly swap: 'never' | 'eachRound'
}

/** A reusable practice: its area and its rounds. */
export type PracticeDesign = {
  readonly id: DesignId
  readonly name: string
  readonly themeId: ThemeId | null
  readonly rounds: readonly DesignRound[]
  /** Missing or null: no sides. */
  readonly sides?: DesignSides | null
}
