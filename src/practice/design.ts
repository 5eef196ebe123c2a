import type { Seconds } from '#common/time'
import type { ThemeId } from '#themes/theme'

export type DesignId = string

/** How many of each role one area takes at a time. */
export type AreaShape = { readonly attack: number; readonly defend: number; readonly keep: number }

/** A round of a design: so many turns of one length, played in the areas named. */
export type DesignRound = {
  readonly title: string
  readonly turnCount: number
  readonly turnSeconds: Seconds
  /** Nobody's time between two turns of the round. */
  readonly gapSeconds: Seconds
  readonly stations: readonly AreaShape[]
}

/** A reusable practice: its area and its rounds. */
export type PracticeDesign = {
  readonly id: DesignId
  readonly name: string
  readonly themeId: ThemeId | null
  readonly rounds: readonly DesignRound[]
}
