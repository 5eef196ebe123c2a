import {
  type DateOrder,
  type DaySpan,
  dateOrders,
  dayFrom,
  isDateLike,
  orderShown,
} from '#exchange/table/date-form'

/**
 * How the dates of a file are to be read. `certain`: only this order makes days of all of them. `open`: more than one
 * does and they would be other days; a person must say. `none`: no order fits all; `order` fits the most.
 */
export type DateReading =
  | { readonly kind: 'certain'; readonly order: DateOrder }
  | { readonly kind: 'open'; readonly orders: readonly DateOrder[]; readonly example: string }
  | { readonly kind: 'none'; readonly order: DateOrder; readonly example: string }

/** Decides over all the dates of a file together: one 31/12 settles every 3/4 beside it. */
export function readDateOrder(texts: readonly string[], within: DaySpan | null): DateReading {
  const dates = texts.map((text) => text.trim()).filter((text) => text !== '')
  const shown = new Set(dates.map(orderShown).filter((order) => order !== null && order !== 'any'))
  // What is no date in any order is that row's own problem and says nothing about the others.
  const open = dates.filter((text) => orderShown(text) === null && isDateLike(text, within))
  const fits = (order: DateOrder) => open.filter((text) => dayFrom(text, order, within) !== null).length
  if (open.length === 0) return { kind: 'certain', order: [...shown][0] === 'dmy' ? 'dmy' : 'ymd' }
  // Dots beside slashes are one person's habit: day first in both.
  const asked: readonly DateOrder[] = shown.has('dmy') && fits('dmy') === open.length ? ['dmy'] : dateOrders
  const fitting = asked.filter((order) => fits(order) === open.length)
  const [first, ...others] = fitting
  if (first === undefined) {
    const best = dateOrders.reduce((a, b) => (fits(b) > fits(a) ? b : a), 'dmy' as DateOrder)
    return { kind: 'none', order: best, example: open.find((text) => !dayFrom(text, best, within)) ?? '' }
  }
  const differs = open.find((text) =>
    others.some((order) => dayFrom(text, order, within) !== dayFrom(text, first, within)),
  )
  return differs === undefined
    ? { kind: 'certain', order: first }
    : { kind: 'open', orders: fitting, example: differs }
}

/** The day of a text under a chosen order; a form that shows its own order (2026-12-31) keeps to that. */
export function dayOfText(text: string, order: DateOrder, within: DaySpan | null): string | null {
  const shown = orderShown(text)
  return dayFrom(text, shown === 'ymd' || shown === 'dmy' ? shown : order, within)
}
