import { describe, expect, it } from 'vitest'
import { daysLater } from '#common/days-later'
import { showsFrom } from '#family/shows-from'

// What each zone's clocks show, by the runtime's own tables of zones (ICU); the reckoning under test goes the other way.
const clockIn = (timeZone: string, instant: Date) =>
  new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short', timeStyle: 'medium' }).format(instant)

describe('when families see what was confirmed', () => {
  it('is eight in the morning of the next day in the club’s zone', () => {
    const at = (confirmedOn: string, timeZone: string) => showsFrom({ confirmedOn, timeZone }).toISOString()
    expect(at('2026-01-15', 'Europe/London')).toBe('2026-01-16T08:00:00.000Z')
    expect(at('2026-06-15', 'Europe/London')).toBe('2026-06-16T07:00:00.000Z')
    expect(at('2026-12-31', 'Pacific/Auckland')).toBe('2026-12-31T19:00:00.000Z')
    expect(at('2026-06-15', 'Asia/Kathmandu')).toBe('2026-06-16T02:15:00.000Z')
  })

  it('is eight by the new clocks in the night they are changed', () => {
    // British Summer Time 2026: 29 March to 25 October, at 01:00 UTC (the last Sundays of March and October).
    const london = (confirmedOn: string) =>
      showsFrom({ confirmedOn, timeZone: 'Europe/London' }).toISOString()
    expect(london('2026-03-28')).toBe('2026-03-29T07:00:00.000Z')
    expect(london('2026-10-24')).toBe('2026-10-25T08:00:00.000Z')
  })

  it('shows eight on every clock of every zone, on each day of a year', () => {
    const zones = Intl.supportedValuesOf('timeZone').filter((_, index) => index % 37 === 0)
    expect(zones.length).toBeGreaterThan(10)
    for (const timeZone of [...zones, 'Australia/Lord_Howe', 'America/Santiago', 'Africa/Casablanca'])
      for (let day = '2026-01-01'; day <= '2026-12-31'; day = daysLater(day, 7)) {
        const seen = clockIn(timeZone, showsFrom({ confirmedOn: day, timeZone }))
        expect(`${timeZone} ${seen}`).toBe(`${timeZone} ${daysLater(day, 1)} 08:00:00`)
      }
  })
})
