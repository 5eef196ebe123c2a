import { describe, expect, it } from 'vitest'
import { type ChildRequest, dueDays, inOrderOfUrgency, lastDayOf, whyNotExtend } from '#rights/child-request'
import { daysLeft } from '#rights/days-left'

const request = (change: Partial<ChildRequest> = {}): ChildRequest => ({
  id: 'a',
  playerId: 'p',
  kind: 'copy',
  text: '',
  askedById: null,
  receivedOn: '2026-03-02',
  dueOn: '2026-04-02',
  extendedTo: null,
  extendedWhy: '',
  outcome: null,
  answer: '',
  answeredAt: null,
  ...change,
})

describe('a request', () => {
  it('has a month, or three from the day it came where it is hard (article 12(3))', () => {
    // 31 January 2026 + 3 months: 30 April, a Thursday.
    expect(dueDays('2026-01-31', [])).toEqual({ dueOn: '2026-03-02', latest: '2026-04-30' })
    expect(lastDayOf(request({ extendedTo: '2026-06-02' }))).toBe('2026-06-02')
  })

  it('is given more time once, while the first month lasts', () => {
    expect(whyNotExtend(request(), '2026-04-02')).toBeNull()
    expect(whyNotExtend(request(), '2026-04-03')).toBe('tooLate')
    expect(whyNotExtend(request({ extendedTo: '2026-06-02' }), '2026-03-05')).toBe('extended')
    expect(whyNotExtend(request({ outcome: 'done' }), '2026-03-05')).toBe('answered')
  })

  it('stands by its last day, open ones before answered ones', () => {
    const order = inOrderOfUrgency([
      request({ id: 'answered early', outcome: 'done', answeredAt: new Date('2026-03-03') }),
      request({ id: 'extended', extendedTo: '2026-06-02' }),
      request({ id: 'answered late', outcome: 'refused', answeredAt: new Date('2026-03-09') }),
      request({ id: 'next', dueOn: '2026-04-10' }),
      request({ id: 'first' }),
    ])
    expect(order.map(({ id }) => id)).toEqual([
      'first',
      'next',
      'extended',
      'answered late',
      'answered early',
    ])
  })
})

describe('the days left', () => {
  it.each([
    ['2026-04-01', '1 day left', false],
    ['2026-03-02', '31 days left', false],
    ['2026-04-02', 'due today', false],
    ['2026-04-03', '1 day late', true],
    ['2026-04-30', '28 days late', true],
  ])('on %s: %s', (today, words, isLate) => {
    expect(daysLeft('2026-04-02', today)).toEqual({ words, isLate })
  })
})
