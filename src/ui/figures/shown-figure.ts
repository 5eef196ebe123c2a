import { roundToMinutes } from '#common/apportion'
import type { Seconds } from '#common/time'
import type { Status } from '#fairness/status'
import { wholeMinutes } from '#ui/figures/minutes'

/** What a balance bar is drawn from. */
export type BarFigure = {
  readonly seconds: number
  readonly dueSeconds: number
  readonly toleranceSeconds: Seconds
  readonly status: Status
  /** Outside the band on the side that costs the player something. */
  readonly isConcern: boolean
}

/** A player's figure as a page shows it: whole minutes beside the seconds the bar is drawn from. */
export type ShownFigure<Figure extends BarFigure = BarFigure> = {
  readonly figure: Figure
  readonly minutes: number
  readonly dueMinutes: number
  /** `minutes - dueMinutes`, so that the three always agree on a page. */
  readonly differenceMinutes: number
}

/**
 * Figures of one player in whole minutes. What it had adds up to its whole time; the difference is the one that its
 * flags name; what was due follows from the two, and may be a minute beside its own rounding.
 */
export function showFigures<Figure extends BarFigure>(
  figures: readonly Figure[],
): readonly ShownFigure<Figure>[] {
  const minutes = roundToMinutes(figures.map((figure) => figure.seconds))
  return figures.map((figure, index) => {
    const had = minutes[index] ?? 0
    const dueMinutes = Math.max(0, had - wholeMinutes(figure.seconds - figure.dueSeconds))
    return { figure, minutes: had, dueMinutes, differenceMinutes: had - dueMinutes }
  })
}
