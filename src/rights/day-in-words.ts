import type { Day } from '#common/time'

/** A day in full, as a letter has it: "2 July 2026". */
export function dayInWords(day: Day, locale = 'en-GB'): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(
    new Date(`${day}T12:00:00Z`),
  )
}
