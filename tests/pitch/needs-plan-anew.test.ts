import { describe, expect, it } from 'vitest'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import { aPhone, aPlan, aPlannedTurn, stateOf } from '../support/pitch-builder'

// Rules of our own (common practice, no source): a plan is made anew for who comes and who goes, and for nobody else.

/** Five players, three places: whoever plays the third ball has waited in the first. */
const turns = [aPlannedTurn(0, 'ab/c'), aPlannedTurn(0, 'cd/e'), aPlannedTurn(0, 'ea/b')]
const plan = aPlan(turns)

function begun(letters = 'abcde') {
  const phone = aPhone()
  phone.here(letters)
  phone.begin()
  return phone
}
const needs = (phone: ReturnType<typeof aPhone>) => needsPlanAnew(stateOf(plan, 'abcdef', phone))

describe('a plan', () => {
  it('fits those it was made for, to its last ball', () => {
    const phone = begun()
    expect(needs(phone)).toBe(false)
    phone.end(70, phone.start(10, 0, 'ab/c'))
    phone.end(140, phone.start(80, 1, 'cd/e'))
    // c and d have no place in the last ball and have had theirs.
    expect(needs(phone)).toBe(false)
    phone.start(150, 2, 'ea/b')
    expect(needs(phone)).toBe(false)
  })

  it('does not fit when somebody with a place to come goes, and does when one without goes', () => {
    const goes = (playerId: string) => {
      const phone = begun()
      phone.end(70, phone.start(10, 0, 'ab/c'))
      phone.end(140, phone.start(80, 1, 'cd/e'))
      phone.state(playerId, 'gone', 145)
      return needs(phone)
    }
    expect(goes('a')).toBe(true)
    expect(goes('d')).toBe(false)
  })

  it('does not fit when somebody comes whom it does not count on, the last ball included', () => {
    const phone = begun()
    phone.end(70, phone.start(10, 0, 'ab/c'))
    phone.end(140, phone.start(80, 1, 'cd/e'))
    phone.state('f', 'here', 145)
    expect(needs(phone)).toBe(true)
  })

  it('does not fit when somebody comes back who has no place any more', () => {
    const phone = begun()
    phone.end(70, phone.start(10, 0, 'ab/c'))
    phone.end(140, phone.start(80, 1, 'cd/e'))
    phone.state('d', 'gone', 142)
    expect(needs(phone)).toBe(false)
    phone.state('d', 'here', 146)
    expect(needs(phone)).toBe(true)
  })
})
