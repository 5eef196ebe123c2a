import { addMonths } from 'date-fns/addMonths'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { dueDay, monthsLater } from '#rights/due-day'

const plain = { months: 1, holidays: [] }

// ico.org.uk, "I need to complete a SAR" (read as stored text): 3 September → 3 October. The other examples are the same
// guidance as schoolspeople.co.uk quotes it (17 August 2019, read as stored text); weekdays by the calendar of the year.
describe('the last day to answer', () => {
  it.each([
    ['received on 3 September', '2024-09-03', [], '2024-10-03'],
    ['received on 31 January', '2025-01-31', [], '2025-02-28'],
    ['in a leap year on 31 January', '2024-01-31', [], '2024-02-29'],
    ['on 1 April, when 1 May is a holiday', '2024-04-01', ['2024-05-01'], '2024-05-02'],
    [
      'on 1 April, when 1 May is a Saturday and the Monday a holiday',
      '2021-04-01',
      ['2021-05-03'],
      '2021-05-04',
    ],
    ['on 1 August, when 1 September is a Sunday', '2024-08-01', [], '2024-09-02'],
    ['on 31 March, when April has 30 days', '2026-03-31', [], '2026-04-30'],
    ['on 30 January', '2025-01-30', [], '2025-02-28'],
    ['at the end of a year', '2025-12-31', [], '2026-02-02'],
  ])('%s', (_what, received, holidays, due) => {
    expect(dueDay(received, { months: 1, holidays })).toBe(due)
  })

  // Regulation (EEC, Euratom) 1182/71, article 3(4): a Saturday, a Sunday or a public holiday is followed by the next working day.
  it('is never a weekend or a holiday, never earlier than the date itself, and passes over nothing else', () => {
    const day = fc.integer({ min: 0, max: 20_000 }).map((days) => daysLater('1990-01-01', days))
    fc.assert(
      fc.property(day, fc.array(fc.integer({ min: 0, max: 12 }), { maxLength: 6 }), (received, offs) => {
        const date = monthsLater(received, 1)
        const holidays = offs.map((off) => daysLater(date, off))
        const due = dueDay(received, { ...plain, holidays })
        const isOff = (one: string) =>
          holidays.includes(one) || [0, 6].includes(new Date(`${one}T12:00:00Z`).getUTCDay())
        expect(isOff(due)).toBe(false)
        for (let passed = date; passed < due; passed = daysLater(passed, 1)) expect(isOff(passed)).toBe(true)
        expect(due >= date).toBe(true)
      }),
    )
  })
})

describe('so many months later', () => {
  // date-fns 4, addMonths: a library that others wrote.
  it('is as date-fns has it, on any day', () => {
    const day = fc.integer({ min: 0, max: 40_000 }).map((days) => daysLater('1990-01-01', days))
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 130 }), (from, months) => {
        const [year = 0, month = 0, date = 0] = from.split('-').map(Number)
        const theirs = addMonths(new Date(year, month - 1, date, 12), months)
        const two = (part: number) => String(part).padStart(2, '0')
        expect(monthsLater(from, months)).toBe(
          `${theirs.getFullYear()}-${two(theirs.getMonth() + 1)}-${two(theirs.getDate())}`,
        )
      }),
    )
  })
})
