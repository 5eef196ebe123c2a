import { hasDay } from '#common/dated'
import { type Day, isDay } from '#common/time'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { formatDay, formatDays } from '#ui/format-day'

type Move = {
  /** The practice's own day. */
  readonly from: Day
  /** As it was typed. */
  readonly to: string
  readonly term: Pick<AheadTerm, 'name' | 'firstDay' | 'lastDay' | 'asOf' | 'closed'>
}

/** Why a practice cannot be moved to a day, in a sentence; null: it can. */
export function moveFault({ from, to, term }: Move): string | null {
  if (!isDay(to)) return 'Choose the day it is moved to.'
  if (to === from) return `The practice is on ${formatDay(to)} already. Choose another day.`
  if (!hasDay(term, to))
    return `${formatDay(to)} is not in ${term.name}. Choose a day from ${formatDays(term)}.`
  if (term.asOf !== null && to < term.asOf)
    return `${formatDay(to)} is past: the squad’s book is written up to ${formatDay(term.asOf)}. Choose a later day.`
  const closed = term.closed.find((span) => hasDay(span, to))
  return closed
    ? `There is no practice on ${formatDay(to)}: ${closed.name}, ${formatDays(closed)}. Choose another day.`
    : null
}
