import { describe, expect, it } from 'vitest'
import { type DateOrder, dayFrom } from '#exchange/table/date-form'
import { dayOfText, readDateOrder } from '#exchange/table/date-order'

const season = { firstDay: '2026-08-01', lastDay: '2027-06-30' }

describe('a date as people write it', () => {
  it.each<[string, DateOrder, string | null]>([
    ['31/12/2026', 'dmy', '2026-12-31'],
    ['31/12/2026', 'mdy', null],
    ['31.12.26', 'dmy', '2026-12-31'],
    ['31-12-2026', 'dmy', '2026-12-31'],
    ['31. 12. 2026', 'dmy', '2026-12-31'],
    ['2026-12-31', 'ymd', '2026-12-31'],
    ['2026/12/31', 'ymd', '2026-12-31'],
    ['20261231', 'ymd', '2026-12-31'],
    ['2026-12-31T18:30:00', 'ymd', '2026-12-31'],
    ['2026-12-31 18:30', 'ymd', '2026-12-31'],
    ['12/31/2026', 'mdy', '2026-12-31'],
    ['12/31/26 6:30 PM', 'mdy', '2026-12-31'],
    ['Thu 31/12/2026', 'dmy', '2026-12-31'],
    ['Thursday, 31 December 2026', 'dmy', '2026-12-31'],
    ['31 Dec 26', 'mdy', '2026-12-31'],
    ['Dec 31st, 2026', 'dmy', '2026-12-31'],
    ['1 Sept 2026', 'dmy', '2026-09-01'],
    ['29/02/2027', 'dmy', null],
    ['29/02/2028', 'dmy', '2028-02-29'],
    ['31/11/2026', 'dmy', null],
    ['0/1/2026', 'dmy', null],
    ['1/1.2026', 'dmy', null],
    ['31/12/202', 'dmy', null],
    ['ten', 'dmy', null],
    ['12', 'dmy', null],
    ['', 'dmy', null],
  ])('%j read %s is %j', (text, order, day) => {
    expect(dayFrom(text, order, null)).toBe(day)
  })

  it.each<[string, DateOrder, string | null]>([
    ['3/9', 'dmy', '2026-09-03'],
    ['3.1.', 'dmy', '2027-01-03'],
    ['Tue 3 Nov', 'dmy', '2026-11-03'],
    ['15/7', 'dmy', null],
  ])('%j without a year is the one in the season: %s gives %j', (text, order, day) => {
    expect(dayFrom(text, order, season)).toBe(day)
  })
})

describe('the order of day and month', () => {
  it.each<[string, string[], object]>([
    ['is settled for all by one date', ['3/4/2026', '31/12/2026'], { kind: 'certain', order: 'dmy' }],
    ['is settled the other way too', ['3/4/2026', '12/31/2026'], { kind: 'certain', order: 'mdy' }],
    [
      'is open when every date can be read both ways',
      ['3/4/2026', '5/6/2026'],
      { kind: 'open', orders: ['dmy', 'mdy'], example: '3/4/2026' },
    ],
    ['is no matter when both ways give one day', ['5/5/2026'], { kind: 'certain', order: 'dmy' }],
    ['is day first with dots', ['3.4.26'], { kind: 'certain', order: 'dmy' }],
    ['is day first for slashes beside dots', ['3.4.26', '5/6/2026'], { kind: 'certain', order: 'dmy' }],
    ['is no question with the year first', ['2026-03-04'], { kind: 'certain', order: 'ymd' }],
    [
      'is open beside dates with the year first',
      ['2026-03-04', '5/6/2026'],
      { kind: 'open', orders: ['dmy', 'mdy'], example: '5/6/2026' },
    ],
    [
      'is impossible when two dates contradict each other',
      ['31/12/2026', '12/31/2026'],
      { kind: 'none', order: 'dmy', example: '12/31/2026' },
    ],
    ['is not upset by what is no date', ['31/12/2026', 'tbc', ''], { kind: 'certain', order: 'dmy' }],
    ['is settled by the season for dates without a year', ['1/7', '3/9'], { kind: 'certain', order: 'mdy' }],
  ])('%s: %j', (_sentence, texts, reading) => {
    expect(readDateOrder(texts, season)).toEqual(reading)
  })

  it('never turns around a date that shows its own', () => {
    expect(dayOfText('2026-03-04', 'mdy', null)).toBe('2026-03-04')
    expect(dayOfText('3.4.2026', 'mdy', null)).toBe('2026-04-03')
  })
})
