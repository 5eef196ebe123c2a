import { addDays, format, parseISO } from 'date-fns'
import { describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { isoWeekOf } from '#common/time'
import { mondayOf } from '#common/weeks'

describe('days later', () => {
  // Held against date-fns, which counts on the local calendar; this file also runs in a zone far from UTC.
  it.each(['2026-03-28', '2026-10-24', '2026-12-31', '2028-02-28'])(
    'count on the calendar from %s',
    (day) => {
      for (const days of [-400, -1, 0, 1, 7, 14, 366]) {
        expect(daysLater(day, days)).toBe(format(addDays(parseISO(day), days), 'yyyy-MM-dd'))
      }
    },
  )
})

describe('the Monday of a week', () => {
  // ISO 8601: 2026 has a week 53, which begins on 28 December; 1 January 2027 is a Friday.
  it('is in its own week, in a year with a week 53 too', () => {
    expect(mondayOf('2026-W53')).toBe('2026-12-28')
    expect(mondayOf('2027-W01')).toBe('2027-01-04')
    for (const week of ['2025-W36', '2026-W01', '2026-W53']) expect(isoWeekOf(mondayOf(week))).toBe(week)
  })
})
