import { format } from 'date-fns/format'
import { parseISO } from 'date-fns/parseISO'
import { daysLater } from '#common/days-later'
import { type Day, isoWeekOf } from '#common/time'

/** Every ISO week from that of the first day to that of the last, in order: a year's week 53 comes between 52 and 1. */
export function isoWeeksBetween({
  firstDay,
  lastDay,
}: {
  readonly firstDay: Day
  readonly lastDay: Day
}): readonly string[] {
  const weeks: string[] = []
  const lastWeek = isoWeekOf(lastDay)
  for (let day = firstDay; day <= lastDay; day = daysLater(day, 7)) weeks.push(isoWeekOf(day))
  if (firstDay <= lastDay && weeks.at(-1) !== lastWeek) weeks.push(lastWeek)
  return weeks
}

/** The Monday of an ISO week such as `2026-W53`. */
export function mondayOf(week: string): Day {
  return format(parseISO(`${week}-1`), 'yyyy-MM-dd')
}
