import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { instantOf } from '#common/instant-of'

const at = (day: string, minute: number, timeZone: string) =>
  instantOf({ day, minute, timeZone }).toISOString().slice(0, 16)

describe('the instant at which clocks show a time', () => {
  // RFC 5545, 3.3.5, its two examples: 2007-11-04 01:30 in New York is 01:30 EDT, 2007-03-11 02:30 is 03:30 EDT.
  it('is the first where they show it twice, and by the clocks before where they never do', () => {
    expect(at('2007-11-04', 90, 'America/New_York')).toBe('2007-11-04T05:30')
    expect(at('2007-03-11', 150, 'America/New_York')).toBe('2007-03-11T07:30')
  })

  // Instants of change from the IANA time zone database.
  it.each([
    ['Europe/London', '2026-03-29', 59, '2026-03-29T00:59'],
    ['Europe/London', '2026-03-29', 90, '2026-03-29T01:30'],
    ['Europe/London', '2026-03-29', 120, '2026-03-29T01:00'],
    ['Europe/London', '2026-10-25', 59, '2026-10-24T23:59'],
    ['Europe/London', '2026-10-25', 90, '2026-10-25T00:30'],
    ['Europe/London', '2026-10-25', 120, '2026-10-25T02:00'],
    ['America/New_York', '2026-03-08', 119, '2026-03-08T06:59'],
    ['America/New_York', '2026-03-08', 180, '2026-03-08T07:00'],
    ['America/New_York', '2026-11-01', 120, '2026-11-01T07:00'],
    // Half an hour: back at 02:00 to 01:30 in April, on at 02:00 to 02:30 in October.
    ['Australia/Lord_Howe', '2026-04-05', 89, '2026-04-04T14:29'],
    ['Australia/Lord_Howe', '2026-04-05', 105, '2026-04-04T14:45'],
    ['Australia/Lord_Howe', '2026-04-05', 120, '2026-04-04T15:30'],
    ['Australia/Lord_Howe', '2026-10-04', 119, '2026-10-03T15:29'],
    ['Australia/Lord_Howe', '2026-10-04', 135, '2026-10-03T15:45'],
    ['Australia/Lord_Howe', '2026-10-04', 150, '2026-10-03T15:30'],
    // A whole day that never was.
    ['Pacific/Apia', '2011-12-29', 1080, '2011-12-30T04:00'],
    ['Pacific/Apia', '2011-12-31', 1080, '2011-12-31T04:00'],
    ['Asia/Kathmandu', '2026-06-01', 1080, '2026-06-01T12:15'],
  ])('in %s on %s at minute %i', (timeZone, day, minute, expected) => {
    expect(at(day, minute, timeZone)).toBe(expected)
  })

  it('is one at which they do show it, at any hour that none of them skips', () => {
    const zones = ['Europe/London', 'America/New_York', 'Australia/Lord_Howe', 'Pacific/Auckland', 'UTC']
    const anyTime = fc.record({
      timeZone: fc.constantFrom(...zones),
      day: fc
        .date({ min: new Date('2000-01-01'), max: new Date('2040-01-01'), noInvalidDate: true })
        .map((one) => one.toISOString().slice(0, 10)),
      minute: fc.integer({ min: 4 * 60, max: 23 * 60 + 59 }),
    })
    fc.assert(
      fc.property(anyTime, ({ timeZone, day, minute }) => {
        const shown = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'short' })
        const two = (number: number) => String(number).padStart(2, '0')
        const wanted = `${day} ${two(Math.floor(minute / 60))}:${two(minute % 60)}`
        expect(shown.format(instantOf({ day, minute, timeZone }))).toBe(wanted)
      }),
      { numRuns: 300 },
    )
  })
})
