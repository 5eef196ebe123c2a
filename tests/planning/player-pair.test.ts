import { describe, expect, it } from 'vitest'
import { pairsForgotten, withApart } from '#planning/player-pair'

// Rules of our own: whoever is kept apart is so in every plan, unless a coach lets the two meet in one.

const pair = (one: string, other: string, change = {}) => ({
  kind: 'apart' as const,
  playerIds: [one, other] as const,
  firstDay: '2026-09-01',
  lastDay: '2026-09-30',
  ...change,
})

describe('pairs that a plan says nothing of', () => {
  it('are those kept apart on its day, whichever of the two is named first', () => {
    const pairs = [
      pair('a', 'b'),
      pair('d', 'c'),
      pair('e', 'f'),
      pair('a', 'f', { kind: 'together' }),
      pair('b', 'f', { lastDay: '2026-09-07' }),
      pair('c', 'f', { firstDay: '2026-09-09', lastDay: null }),
    ]
    const plan = { apart: [['b', 'a'] as const], mayMeet: [['c', 'd'] as const] }
    expect(pairsForgotten(plan, { pairs, day: '2026-09-08' })).toEqual([['e', 'f']])
    expect(pairsForgotten({ apart: [] }, { pairs: [pair('a', 'b')], day: '2026-09-30' })).toEqual([
      ['a', 'b'],
    ])
  })
})

describe('a pair', () => {
  it('is kept apart or may meet, never both', () => {
    const none = { apart: [], mayMeet: [] }
    const apart = withApart(none, ['a', 'b'], true)
    expect(apart).toEqual({ apart: [['a', 'b']], mayMeet: [] })
    const meet = withApart(apart, ['b', 'a'], false)
    expect(meet).toEqual({ apart: [], mayMeet: [['b', 'a']] })
    expect(withApart(meet, ['a', 'b'], true)).toEqual(apart)
  })
})
