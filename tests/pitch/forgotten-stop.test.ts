import { describe, expect, it } from 'vitest'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { foldPitch } from '#pitch/pitch-state'
import { checkPractice } from '#practice/checks/check-practice'
import { lengthQuestion, proposedMinutes } from '#ui/whistle/length-words'
import { aPhone, aPlan, aPlannedTurn, rosterOf } from '../support/pitch-builder'

const letters = 'abcde'
const turns = [aPlannedTurn(0, 'ab/c'), aPlannedTurn(0, 'cd/e'), aPlannedTurn(0, 'ea/b')]
const plan = aPlan(turns)
/** Half past seven in the evening to eight in the morning, more or less. */
const morning = 13 * 3600

function bookOf(
  tap: (phone: ReturnType<typeof aPhone>) => void,
  known: { readonly lengthSeconds: number | null; readonly answered?: number } = { lengthSeconds: null },
) {
  const phone = aPhone()
  phone.here(letters)
  phone.begin()
  tap(phone)
  const book = bookOfPitch(foldPitch(plan, rosterOf(letters), phone.events), known)
  expect(
    checkPractice({
      lengthSeconds: book.lengthSeconds,
      register: book.register.filter(({ state }) => state === 'here'),
      turns: book.turns,
    }),
  ).toEqual([])
  return book
}

describe('a stop forgotten until morning', () => {
  const played = (phone: ReturnType<typeof aPhone>) => {
    phone.done(400, 0, turns)
    phone.stop(morning)
  }

  it('ends the practice with its last turn, or as it was stated where that is later, and is asked about', () => {
    expect(bookOf(played)).toMatchObject({
      lengthSeconds: 400,
      lastSecond: 400,
      lengthAsked: { why: 'stoppedLate', stopped: morning, proposed: 400 },
    })
    expect(bookOf(played, { lengthSeconds: 5400 })).toMatchObject({
      lengthSeconds: 5400,
      lengthAsked: { proposed: 5400 },
    })
    expect(bookOf(played).register.every(({ to }) => to === 400)).toBe(true)
  })

  it('gives way to what the coach says, but not to less than was played', () => {
    const answered = (seconds: number) =>
      bookOf(played, { lengthSeconds: null, answered: seconds }).lengthSeconds
    expect([answered(4500), answered(60), answered(morning)]).toEqual([4500, 400, morning])
  })

  it('asks no more once the answer stands in the book as it was tapped', () => {
    expect(bookOf(played, { lengthSeconds: morning }).lengthAsked).toBeNull()
  })

  it('is no stop for a turn that was left running: it lasted as planned', () => {
    const book = bookOf((phone) => {
      phone.start(100, 0, 'ab/c')
      phone.stop(morning)
    })
    expect(book.turns.map(({ start, end }) => [start, end])).toEqual([[100, 160]])
    expect(book).toMatchObject({ lengthSeconds: 160, lengthAsked: { why: 'stoppedLate' } })
  })

  it('is not taken for one that was tapped while putting the cones away', () => {
    const late = (phone: ReturnType<typeof aPhone>) => {
      phone.done(400, 0, turns)
      phone.stop(400 + 3600)
    }
    expect(bookOf(late)).toMatchObject({ lengthSeconds: 4000, lengthAsked: null })
  })

  it('after a register alone leaves the length to be said', () => {
    const book = bookOf((phone) => phone.stop(morning))
    expect(book).toMatchObject({ lengthSeconds: null, register: [], lengthAsked: { proposed: null } })
    const told = bookOf((phone) => phone.stop(morning), { lengthSeconds: null, answered: 4500 })
    expect(told.register.map(({ to }) => to)).toEqual(Array(5).fill(4500))
    expect(bookOf((phone) => phone.stop(3 * 3600))).toMatchObject({ lengthSeconds: 10800, lengthAsked: null })
  })
})

describe('a register without a stop', () => {
  it('is asked how long it holds, unless that is known', () => {
    const nothing = () => {}
    expect(bookOf(nothing)).toMatchObject({
      register: [],
      lengthAsked: { why: 'notKnown', stopped: null, proposed: null },
    })
    expect(bookOf(nothing, { lengthSeconds: 3600 })).toMatchObject({ lastSecond: 3600, lengthAsked: null })
  })
})

describe('the question', () => {
  it('says how late the stop was and proposes whole minutes', () => {
    const asked = { why: 'stoppedLate', stopped: morning + 300, proposed: 4335 } as const
    expect(lengthQuestion(asked)).toMatch(/^The stop was tapped 13 h 5 min after the beginning/)
    expect(proposedMinutes(asked)).toBe(73)
    expect(lengthQuestion({ ...asked, stopped: 3 * 86400 })).toMatch(/tapped 3 days after/)
    expect(lengthQuestion({ why: 'notKnown', stopped: null, proposed: null })).not.toMatch(/nothing/i)
  })
})
