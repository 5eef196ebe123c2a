import { expect, it } from 'vitest'
import { type MatchColumn, owedOfMatches } from '#lineup/draft/owed-of-matches'

const column = (change: Partial<MatchColumn>): MatchColumn => ({
  playerId: 'p1',
  isMember: true,
  role: 'attack',
  seconds: 0,
  dueSeconds: 0,
  ...change,
})

it('what matches leave somebody due is time on, in goal too, and nothing of what was played as a guest', () => {
  const columns = [
    column({ seconds: 100, dueSeconds: 160 }),
    column({ role: 'keep', seconds: 50, dueSeconds: 20 }),
    column({ role: 'rest', seconds: 90, dueSeconds: 60 }),
    column({ isMember: false, seconds: 7000 }),
    column({ playerId: 'p2', dueSeconds: 5 }),
  ]
  expect(owedOfMatches(columns, 'p1')).toEqual({ playSeconds: 30, keepSeconds: -30 })
})

it('what matches leave somebody due is the same in whatever order the book was added up', () => {
  const parts = [0.1, 0.2, 0.3].map((dueSeconds) => column({ dueSeconds }))
  expect(owedOfMatches(parts, 'p1')).toEqual(owedOfMatches([...parts].reverse(), 'p1'))
})
