import { eachDayOfInterval, getISODay, parseISO } from 'date-fns'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { type Weekday, weeklyDays } from '#squad/weekly-days'

const asked = { weekday: 2 as const, firstDay: '2026-06-08', lastDay: '2026-07-07' }

it('are the days of that name, both ends included', () => {
  expect(weeklyDays({ ...asked, closed: [], taken: [] }).add).toEqual([
    '2026-06-09',
    '2026-06-16',
    '2026-06-23',
    '2026-06-30',
    '2026-07-07',
  ])
  const oneDay = { weekday: 7 as const, firstDay: '2026-06-14', lastDay: '2026-06-14' }
  expect(weeklyDays({ ...oneDay, closed: [], taken: [] }).add).toEqual(['2026-06-14'])
  expect(weeklyDays({ ...oneDay, weekday: 6, closed: [], taken: [] }).add).toEqual([])
})

it('leave out days without practice, by their name, and days that have one', () => {
  const closed = [{ firstDay: '2026-06-22', lastDay: '2026-06-23', name: 'Fair' }]
  const taken = ['2026-06-16', '2026-06-17', '2026-06-23']
  expect(weeklyDays({ ...asked, closed, taken })).toEqual({
    add: ['2026-06-09', '2026-06-30', '2026-07-07'],
    skipped: [
      { day: '2026-06-16', why: 'taken', name: '' },
      { day: '2026-06-23', why: 'closed', name: 'Fair' },
    ],
  })
})

it('are over clock changes and years what the calendar of a library says', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 7 }),
      fc.integer({ min: 0, max: 3000 }),
      fc.integer({ min: 0, max: 120 }),
      (weekday, from, length) => {
        const firstDay = daysLater('2023-01-01', from)
        const lastDay = daysLater(firstDay, length)
        // Days of the week by date-fns, ISO 8601: Monday 1.
        const all = eachDayOfInterval({ start: parseISO(firstDay), end: parseISO(lastDay) })
        const right = all.filter((date) => getISODay(date) === weekday).length
        const { add } = weeklyDays({
          weekday: weekday as Weekday,
          firstDay,
          lastDay,
          closed: [],
          taken: [],
        })
        expect(add.length).toBe(right)
        for (const day of add) {
          expect(getISODay(parseISO(day))).toBe(weekday)
          expect(firstDay <= day && day <= lastDay).toBe(true)
        }
      },
    ),
    { numRuns: 100 },
  )
})
