import { describe, expect, it } from 'vitest'
import { isDay, isoWeekOf } from '#common/time'
import { isoWeeksBetween } from '#common/weeks'

describe('ISO weeks', () => {
  it.each([
    // Python documentation, datetime.date.isocalendar.
    ['2003-12-29', '2004-W01'],
    ['2004-01-04', '2004-W01'],
    // ISO 8601: week 1 is the week with the year's first Thursday; worked out by hand.
    ['2005-01-01', '2004-W53'],
    ['2008-12-29', '2009-W01'],
    ['2010-01-03', '2009-W53'],
    ['2020-12-31', '2020-W53'],
    ['2024-12-30', '2025-W01'],
    ['2026-01-01', '2026-W01'],
    ['2026-12-31', '2026-W53'],
    ['2027-01-01', '2026-W53'],
  ])('%s is in %s', (day, week) => {
    expect(isoWeekOf(day)).toBe(week)
  })

  it('counts week 53 between 52 and 1, over changes of the clock in both halves of the world', () => {
    expect(isoWeeksBetween({ firstDay: '2026-12-20', lastDay: '2027-01-12' })).toEqual([
      '2026-W51',
      '2026-W52',
      '2026-W53',
      '2027-W01',
      '2027-W02',
    ])
    // 25 October 2026 in Europe and 27 September 2026 in New Zealand are in here.
    expect(isoWeeksBetween({ firstDay: '2026-09-21', lastDay: '2026-11-02' })).toEqual(
      [39, 40, 41, 42, 43, 44, 45].map((week) => `2026-W${week}`),
    )
  })

  it('has the one week of one day, and none backwards', () => {
    expect(isoWeeksBetween({ firstDay: '2026-12-31', lastDay: '2026-12-31' })).toEqual(['2026-W53'])
    expect(isoWeeksBetween({ firstDay: '2026-12-31', lastDay: '2026-12-01' })).toEqual([])
  })
})

describe('days', () => {
  it.each(['2026-02-29', '2026-13-01', '2026-1-1', '', '2026-04-31'])('%s is not in the calendar', (text) => {
    expect(isDay(text)).toBe(false)
  })

  it.each(['2024-02-29', '2000-02-29', '2026-12-31'])('%s is', (text) => {
    expect(isDay(text)).toBe(true)
  })
})
