import type { PlayerAgreement } from '#planning/agreed-today'
import type { SeasonOfPlayer } from '#planning/season-gaps'

/** A player who can be planned for, with what is carried in from the season. */
export type PlannablePlayer = {
  readonly id: string
  readonly name: string
  /** On the day of the practice. */
  readonly keeps: boolean
  readonly isMember: boolean
  /** What was agreed and holds on the day of the practice. */
  readonly agreements: readonly PlayerAgreement[]
  /** From practices alone, and with matches as well. */
  readonly season: { readonly practice: SeasonOfPlayer; readonly withMatches: SeasonOfPlayer }
}
