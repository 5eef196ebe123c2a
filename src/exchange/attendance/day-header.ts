import type { Day } from '#common/time'
import { type DateOrder, type DaySpan, isDateLike } from '#exchange/table/date-form'
import { dayOfText } from '#exchange/table/date-order'

/** A header cell that begins with a date: the date as written and what stands behind it (`Sat 5/9 cup`). */
export type DayHeader = { readonly dateText: string; readonly rest: string }

/** Null when the cell does not begin with a date. */
export function splitDayHeader(cell: string, within: DaySpan | null): DayHeader | null {
  const words = cell.split(' ')
  for (let count = Math.min(words.length, 5); count > 0; count -= 1) {
    const dateText = words
      .slice(0, count)
      .join(' ')
      .replace(/[:,;]$/, '')
    if (isDateLike(dateText, within))
      return {
        dateText,
        rest: words
          .slice(count)
          .join(' ')
          .replace(/^[-–:,(\s]+|\)$/g, ''),
      }
  }
  return null
}

export function dayOfHeader(
  cell: string,
  order: DateOrder,
  within: DaySpan | null,
): { readonly day: Day; readonly rest: string } | null {
  const split = splitDayHeader(cell, within)
  const day = split && dayOfText(split.dateText, order, within)
  return split && day ? { day, rest: split.rest } : null
}
