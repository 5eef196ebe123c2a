import { describe, expect, it } from 'vitest'
import { differenceText, judgedDifferenceText, signedMinutes } from '#ui/figures/difference'
import { minutesText, wholeMinutes } from '#ui/figures/minutes'

describe('seconds as minutes', () => {
  it.each([
    [0, 0],
    [29, 0],
    [30, 1],
    [-30, -1],
    [89, 1],
    [3600, 60],
  ])('%d s are %d min', (seconds, minutes) => {
    expect(wholeMinutes(seconds)).toBe(minutes)
  })

  it('has no negative nought', () => {
    expect(Object.is(wholeMinutes(-10), 0)).toBe(true)
  })

  it('never turns into hours', () => {
    expect(minutesText(2 * 3600)).toBe('120 min')
  })
})

describe('a difference from an even share', () => {
  it('is said in words and never by sign alone', () => {
    expect(differenceText(-12)).toBe('12 min less')
    expect(differenceText(3)).toBe('3 min more')
    expect(differenceText(0)).toBe('the same')
  })

  it('carries a true minus sign in tables', () => {
    expect(signedMinutes(-12)).toBe('−12')
    expect(signedMinutes(3)).toBe('+3')
    expect(signedMinutes(0)).toBe('0')
  })

  it('is about even inside the band whatever its size', () => {
    expect(judgedDifferenceText(9, 'within')).toBe('about even, 9 min more')
    expect(judgedDifferenceText(0, 'within')).toBe('about even')
    expect(judgedDifferenceText(-9, 'short')).toBe('9 min less')
  })
})
