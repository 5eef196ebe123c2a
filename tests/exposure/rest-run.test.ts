import { describe, expect, it } from 'vitest'
import { longestRestRun } from '#exposure/rest-run'
import type { Span } from '#exposure/span'

/** One span a letter: w waits, p plays, a is away; a capital is the second half of a free game. */
const spansOf = (story: string): Span[] =>
  [...story].map((letter, index) => ({
    start: index * 40,
    end: index * 40 + 40,
    themeId: null,
    present: letter.toLowerCase() === 'a' ? [] : ['x'],
    seats: [],
    resting: letter.toLowerCase() === 'w' ? ['x'] : [],
    turnCount: 1,
    continuesWait: letter !== letter.toLowerCase(),
    continuesTurn: false,
  }))

describe('the longest run of waits', () => {
  it.each([
    ['', 0, 0],
    ['ppp', 0, 0],
    ['wwpwww', 3, 3],
    ['wwaww', 2, 2],
    ['wW', 2, 1],
    ['wwWw', 4, 3],
    ['pW', 1, 1],
    ['aWw', 2, 2],
    ['wPw', 1, 1],
  ])('of %j', (story, apart, together) => {
    expect(longestRestRun(spansOf(story), 'x', { freeGameIsOneWait: false })).toBe(apart)
    expect(longestRestRun(spansOf(story), 'x', { freeGameIsOneWait: true })).toBe(together)
  })
})
