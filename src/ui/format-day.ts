import type { Day } from '#common/time'

const clubLocale = 'en-GB'

type DayStyle = 'short' | 'long' | 'month'

const styles: Readonly<Record<DayStyle, Intl.DateTimeFormatOptions>> = {
  short: { day: 'numeric', month: 'short' },
  long: { weekday: 'short', day: 'numeric', month: 'short', year: 'numeric' },
  month: { month: 'short' },
}

/** A day as the club writes it, e.g. "Tue, 3 Mar 2026"; `short` leaves out weekday and year, `month` all but the month. */
export function formatDay(day: Day, style: DayStyle = 'long', locale: string = clubLocale): string {
  // Noon UTC read in UTC: the machine's zone cannot move the day.
  return new Intl.DateTimeFormat(locale, { ...styles[style], timeZone: 'UTC' }).format(
    new Date(`${day}T12:00:00Z`),
  )
}

/** From and to as the club writes them, e.g. "3 Sept – 19 Dec 2025". */
export function formatDays(
  { firstDay, lastDay }: { readonly firstDay: Day; readonly lastDay: Day },
  locale: string = clubLocale,
): string {
  const last = new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${lastDay}T12:00:00Z`))
  return `${formatDay(firstDay, 'short', locale)} – ${last}`
}
