import { describe, expect, it } from 'vitest'
import { isPresentThroughout, joinPresence, listPresent } from '#squad/joined-presence'

const line = (playerId: string, from: number, to: number) => ({ playerId, from, to })

describe('presence', () => {
  const joined = joinPresence([
    line('ann', 1500, 4000),
    line('ben', 0, 100),
    line('ann', 0, 1500),
    line('ben', 101, 200),
    line('ann', 5000, 6000),
  ])

  it('joins lines that touch, whatever their order, and keeps gaps', () => {
    expect([...joined]).toEqual([
      [
        'ann',
        [
          { from: 0, to: 4000 },
          { from: 5000, to: 6000 },
        ],
      ],
      [
        'ben',
        [
          { from: 0, to: 100 },
          { from: 101, to: 200 },
        ],
      ],
    ])
  })

  it.each([
    ['over the joint of two lines', 'ann', 1400, 1600, true],
    ['exactly as long as a line', 'ben', 0, 100, true],
    ['over a gap of one second', 'ben', 50, 150, false],
    ['from a second too early', 'ann', 4999, 5100, false],
    ['to a second too late', 'ann', 5900, 6001, false],
    ['of someone without a line', 'cas', 0, 1, false],
  ])('of an interval %s', (_what, playerId, from, to, present) => {
    expect(isPresentThroughout(joined, playerId, { from, to })).toBe(present)
  })

  it('lists who is there for the whole of an interval', () => {
    expect(listPresent(joined, { from: 0, to: 100 })).toEqual(['ann', 'ben'])
    expect(listPresent(joined, { from: 99, to: 102 })).toEqual(['ann'])
  })
})
