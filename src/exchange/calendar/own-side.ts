import type { CalendarField } from '#exchange/calendar/calendar-entry'
import { nameKey } from '#exchange/table/name-form'
import { cellOf } from '#exchange/table/row-reading'

/** The side that stands in every row as home or away, by its key; null: there is none, or more than one. */
export function ownSideOf(
  rows: readonly { readonly cells: readonly string[] }[],
  columns: readonly (CalendarField | null)[],
): string | null {
  const pairs = rows
    .map((row) => [nameKey(cellOf(row, columns, 'homeTeam')), nameKey(cellOf(row, columns, 'awayTeam'))])
    .filter((pair) => pair.every((side) => side !== ''))
  const [first = []] = pairs
  const everywhere = first.filter((side) => pairs.every((pair) => pair.includes(side)))
  return everywhere.length === 1 ? (everywhere[0] ?? null) : null
}
