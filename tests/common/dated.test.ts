import { describe, expect, it } from 'vitest'
import { hasDay, shareADay } from '#common/dated'

const march = { firstDay: '2026-03-01', lastDay: '2026-03-31' }
const sinceApril = { firstDay: '2026-04-01', lastDay: null }

describe('what is dated', () => {
  it.each([
    ['the day before', '2026-02-28', false],
    ['its first day', '2026-03-01', true],
    ['its last day', '2026-03-31', true],
    ['the day after', '2026-04-01', false],
  ])('has both its ends and no more: %s', (_what, day, isIn) => {
    expect(hasDay(march, day)).toBe(isIn)
  })

  it('goes on until further notice when it has no last day', () => {
    expect(hasDay(sinceApril, '2999-01-01')).toBe(true)
    expect(hasDay(sinceApril, '2026-03-31')).toBe(false)
  })

  it.each([
    ['nothing with what begins the day after it ends', march, sinceApril, false],
    ['its last day with what begins on it', march, { firstDay: '2026-03-31', lastDay: null }, true],
    ['all of what lies inside it', sinceApril, { firstDay: '2026-05-01', lastDay: '2026-05-01' }, true],
    ['days with what never ends either', sinceApril, { firstDay: '2025-01-01', lastDay: null }, true],
  ])('shares %s', (_what, one, other, isShared) => {
    expect([shareADay(one, other), shareADay(other, one)]).toEqual([isShared, isShared])
  })
})
