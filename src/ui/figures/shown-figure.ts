import type { Status } from '#fairness/status'

/** A player's figure as a page shows it: whole minutes that add up, beside the seconds the bar is drawn from. */
export type ShownFigure = {
  readonly shareSeconds: number
  readonly fairSeconds: number
  readonly toleranceSeconds: number
  readonly status: Status
  readonly shareMinutes: number
  readonly fairMinutes: number
  /** `shareMinutes - fairMinutes`, so that the three always agree. */
  readonly differenceMinutes: number
  readonly turns: number
  /** Null in matches, which have no turns. */
  readonly fairTurns: number | null
}
