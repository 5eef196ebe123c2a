import { describe, expect, it } from 'vitest'
import { guardCount, guardPart } from '#fairness/committee'
import { countText, partText } from '#ui/review/committee-table'

describe('the committee’s words', () => {
  it('hide what could point at a child', () => {
    expect([0, 1, 4, 5].map((count) => countText(guardCount(count)))).toEqual([
      '0',
      'under 5',
      'under 5',
      '5',
    ])
    expect(partText(guardPart({ count: 9, of: 14 }))).toBe('9 of 14')
    expect(partText(guardPart({ count: 12, of: 14 }))).toBe('more than half')
    expect(partText(guardPart({ count: 2, of: 14 }))).toBe('half or fewer')
    expect(partText(guardPart({ count: 2, of: 3 }))).toBe('squad of under 5')
  })
})
