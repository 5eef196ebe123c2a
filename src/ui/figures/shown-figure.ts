import { roundToMinutes } from '#common/apportion'
import type { Seconds } from '#common/time'
import type { Status } from '#fairness/status'

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
  /** `minutes - dueMinutes`, so that the three always agree. */
  readonly differenceMinutes: number
}

/** Figures of one player in whole minutes: what it had adds up to its whole time, and so does what was due. */
export function showFigures<Figure extends BarFigure>(
  figures: readonly Figure[],
): readonly ShownFigure<Figure>[] {
  const minutes = roundToMinutes(figures.map((figure) => figure.seconds))
  const dueMinutes = roundToMinutes(figures.map((figure) => figure.dueSeconds))
  return figures.map((figure, index) => {
    const had = minutes[index] ?? 0
    const due = dueMinutes[index] ?? 0
    return { figure, minutes: had, dueMinutes: due, differenceMinutes: had - due }
  })
}
