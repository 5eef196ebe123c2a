import { hasDay } from '#common/dated'
import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'
import type { ClosedDays } from '#squad/closed-days'

/** Monday 1 to Sunday 7, as ISO 8601 counts them. */
export type Weekday = 1 | 2 | 3 | 4 | 5 | 6 | 7

/** Practices on one day of every week: those that can be added, and those that cannot, with why. */
export type WeeklyDays = {
  readonly add: readonly Day[]
  readonly skipped: readonly { readonly day: Day; readonly why: 'closed' | 'taken'; readonly name: string }[]
}

/** Every such weekday from the first day to the last, both included; without days without practice and those that have a practice. */
export function weeklyDays({
  weekday,
  firstDay,
  lastDay,
  closed,
  taken,
}: {
  readonly weekday: Weekday
  readonly firstDay: Day
  readonly lastDay: Day
  readonly closed: readonly Pick<ClosedDays, 'firstDay' | 'lastDay' | 'name'>[]
  /** Days that have a practice already. */
  readonly taken: readonly Day[]
}): WeeklyDays {
  const add: Day[] = []
  const skipped: WeeklyDays['skipped'][number][] = []
  const isTaken = new Set(taken)
  const toFirst = (weekday - weekdayOf(firstDay) + 7) % 7
  for (let day = daysLater(firstDay, toFirst); day <= lastDay; day = daysLater(day, 7)) {
    const span = closed.find((one) => hasDay(one, day))
    if (span) skipped.push({ day, why: 'closed', name: span.name })
    else if (isTaken.has(day)) skipped.push({ day, why: 'taken', name: '' })
    else add.push(day)
  }
  return { add, skipped }
}

function weekdayOf(day: Day): Weekday {
  const sundayFirst = new Date(`${day}T00:00:00.000Z`).getUTCDay()
  return (sundayFirst === 0 ? 7 : sundayFirst) as Weekday
}
