import { describe, expect, it } from 'vitest'
import { changeover } from '#pitch/changeover'
import { ballsWords, ballTitle } from '#ui/pitch/ball-number'
import { isChangeOver, isMostlyNew } from '#ui/pitch/whole-ball'
import { area } from '../../support/pitch-builder'

const change = (before: string, after: string) => {
  const [one, other] = [before, after].map((text) => text.split(' ').map(area))
  return { ...changeover(one ?? [], other ?? []), stations: other ?? [] }
}

describe('a ball to come', () => {
  it('in which all change between attack and defence is a change over, with a keeper who stays too', () => {
    expect(isChangeOver(change('ab/cd', 'cd/ab'))).toBe(true)
    expect(isChangeOver(change('ab/cd/k', 'cd/ab/k'))).toBe(true)
    expect(isChangeOver(change('ab/cd', 'cd/ae'))).toBe(false)
    expect(isChangeOver(change('ab/cd', 'ac/bd'))).toBe(false)
    expect(isChangeOver(change('a/b c/d', 'd/c b/a'))).toBe(false)
    expect(isChangeOver(change('ab/cd', 'ab/cd'))).toBe(false)
  })

  it('in which more change than it has lines is shown whole', () => {
    expect(isMostlyNew(change('ab/cd', 'cb/ad'))).toBe(false)
    expect(isMostlyNew(change('ab/cd', 'ce/ad'))).toBe(true)
    expect(isMostlyNew(change('ab/c de/f', 'ae/c db/g'))).toBe(false)
    expect(isMostlyNew(change('ab/c de/f', 'ae/g db/c'))).toBe(false)
    expect(isMostlyNew(change('ab/c de/f', 'de/g ab/f'))).toBe(true)
  })

  it('is called a half in a free game', () => {
    const game = { isFreeGame: true }
    expect([ballTitle(3, null), ballTitle(1, game), ballTitle(2, game)]).toEqual([
      'Ball 3',
      'First half',
      'Second half',
    ])
    expect([ballsWords(1, null), ballsWords(6, {}), ballsWords(2, game)]).toEqual([
      '1 ball',
      '6 balls',
      '2 halves',
    ])
  })
})
