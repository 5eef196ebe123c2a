import { describe, expect, it } from 'vitest'
import { deedWords, lookWords } from '#access/deed-words'
import { sayDeed } from '#access/say-deed'

const nothing = { page: null, isByCode: false, thing: null, child: null, squad: null }

describe('a deed in a sentence', () => {
  it('names who did it, to what, and whom else it was about', () => {
    const deed = {
      ...nothing,
      action: 'recordGuardian',
      by: 'Oda Birch',
      thing: 'Mo Fenn',
      child: 'Ada Fenn',
    }
    expect(sayDeed(deed)).toBe('Oda Birch wrote down Mo Fenn as a guardian of Ada Fenn.')
  })

  it('takes names as they are', () => {
    const deed = { ...nothing, action: 'joinGuest', by: '{thing}', thing: '{child} $& $1', child: 'Bo' }
    expect(sayDeed(deed)).toBe('{thing} said that {child} $& $1 is Bo.')
  })

  it('says of a look which page it was', () => {
    const deed = { ...nothing, action: 'look', page: 'clubChild', by: 'Oda Birch', thing: 'Ada Fenn' }
    expect(sayDeed(deed)).toBe('Oda Birch looked at all that is kept of Ada Fenn.')
    expect(sayDeed({ ...deed, page: 'toString' })).toBe('Oda Birch looked at a page of Ada Fenn.')
  })

  it('is said of helpers with a code, of the book itself, and of what a later version did', () => {
    expect(sayDeed({ ...nothing, action: 'tapAtPitch', by: null, isByCode: true })).toBe(
      'A helper with a code tapped at the pitch in something that is no longer there.',
    )
    expect(sayDeed({ ...nothing, action: 'forgetGuestNames', by: null })).toMatch(/^The book by itself took/)
    expect(sayDeed({ ...nothing, action: 'constructor', by: 'Kit Vale' })).toBe('Kit Vale did “constructor”.')
  })

  it('leaves no brace open, whatever is missing', () => {
    for (const action of Object.keys(deedWords))
      for (const page of [null, ...Object.keys(lookWords)])
        expect(sayDeed({ ...nothing, action, page, by: null })).toMatch(/^[^{}]+\.$/)
  })
})
