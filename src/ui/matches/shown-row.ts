import { roundToMinutes } from '#common/apportion'
import type { JudgedFigure } from '#fairness/book/judged-figure'
import type { MatchRow } from '#fairness/matches/match-rows'
import { type Line, lines } from '#match/match'
import { wholeMinutes } from '#ui/figures/minutes'
import type { ShownFigure } from '#ui/figures/shown-figure'

/** A player's line in whole minutes that add up: lines and off to its time there, the lines to its time on the pitch. */
export type ShownRow = {
  readonly played: ShownFigure<JudgedFigure>
  readonly lineMinutes: Readonly<Record<Line, number>>
  readonly offMinutes: number
}

export function showRow(row: Pick<MatchRow, 'played' | 'lines' | 'offSeconds'>): ShownRow {
  const [keeper = 0, back = 0, middle = 0, forward = 0, offMinutes = 0] = roundToMinutes([
    ...lines.map((line) => row.lines[line]),
    row.offSeconds,
  ])
  const minutes = keeper + back + middle + forward
  const dueMinutes = Math.max(0, minutes - wholeMinutes(row.played.gapSeconds))
  return {
    played: { figure: row.played, minutes, dueMinutes, differenceMinutes: minutes - dueMinutes },
    lineMinutes: { keeper, back, middle, forward },
    offMinutes,
  }
}
