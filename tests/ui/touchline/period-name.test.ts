import { describe, expect, it } from 'vitest'
import { periodName } from '#ui/touchline/period-name'

const periodsOf = (count: number) => Array.from({ length: count }, () => 600)

// English as it is commonly spoken at a pitch; no source.
describe('the name of a period', () => {
  it.each([
    [0, 1, 'the match'],
    [0, 2, 'the first half'],
    [1, 2, 'the second half'],
    [2, 3, 'the third third'],
    [3, 4, 'the fourth quarter'],
    [4, 6, 'period 5'],
    [2, 2, 'extra period 1'],
    [5, 4, 'extra period 2'],
  ])('%i of %i is %s', (period, periods, name) => {
    expect(periodName(period, { periodSeconds: periodsOf(periods), isShortGames: false })).toBe(name)
  })

  it('of a day of short games is a game', () => {
    expect(periodName(2, { periodSeconds: periodsOf(6), isShortGames: true })).toBe('game 3')
  })
})
