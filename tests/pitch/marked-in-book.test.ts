import { describe, expect, it } from 'vitest'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { marksInBook } from '#pitch/marked-in-book'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import { foldPitch } from '#pitch/pitch-state'
import type { RegisterLine } from '#squad/register'
import { aPhone, aPlan, aPlannedTurn, playedText, rosterOf } from '../support/pitch-builder'

// A rule of our own (from the trial of a coach's evening): out for today by the book is out at the pitch.

const turns = [aPlannedTurn(0, 'ab/c'), aPlannedTurn(0, 'cd/a')]
const plan = aPlan(turns)
const roster = rosterOf('abcde')
const out = (playerId: string, from = 0): RegisterLine => ({ playerId, from, to: 3600, state: 'out' })
const fold = (phone: ReturnType<typeof aPhone>, register: readonly RegisterLine[]) =>
  foldPitch(plan, roster, phone.events, marksInBook(register))
const stateOf = (phone: ReturnType<typeof aPhone>, register: readonly RegisterLine[], playerId: string) =>
  fold(phone, register).players.find((player) => player.playerId === playerId)

describe('who is out for today by the book', () => {
  it('is out before anybody taps, is not taken to be here with the others, and makes the plan new', () => {
    const phone = aPhone()
    expect(stateOf(phone, [out('b')], 'b')).toMatchObject({ state: 'out', isOut: true })
    phone.here('acde')
    phone.begin()
    const state = fold(phone, [out('b')])
    expect(needsPlanAnew(state)).toBe(true)
    expect(state.waiting.map(({ playerId }) => playerId)).not.toContain('b')
    expect(state.next?.missing.map(({ playerId }) => playerId)).toEqual(['b'])
  })

  it('stays out whatever is tapped, and gets no turn from a ball, a swap or a whole round', () => {
    const phone = aPhone()
    phone.here('abcde')
    phone.begin()
    const start = phone.start(10, 0, 'ab/c')
    phone.change(20, start, 'eb/c')
    phone.end(40, start)
    phone.state('b', 'here', 45)
    phone.state('b', 'notPlaying', 46)
    phone.done(200, 0, turns)
    const state = fold(phone, [out('b')])
    expect(stateOf(phone, [out('b')], 'b')).toMatchObject({ state: 'out', isOut: true })
    expect(playedText(state).join()).not.toContain('b')
    expect(state.setAside.filter(({ why }) => why === 'isOut')).toHaveLength(3)
    const { register } = bookOfPitch(state)
    expect(register.filter(({ playerId }) => playerId === 'b').map((line) => line.state)).toEqual(['out'])
  })

  it('was played before it was typed, in the middle of a practice', () => {
    const phone = aPhone()
    phone.here('abcde')
    phone.begin()
    const start = phone.start(10, 0, 'ab/c')
    phone.end(40, start)
    expect(playedText(fold(phone, [out('b', 30)]))).toEqual(['10-30 ab/c | 30-40 a/c'])
  })

  it('is taken back with a second answer alone, on whichever phone, and that can be undone', () => {
    const [one, other] = [aPhone('p1'), aPhone('p2')]
    one.here('abcde')
    one.begin()
    const back = other.tap(30, { kind: 'register', playerId: 'b', state: 'here', secondAnswer: true })
    const both = { ...one, events: [...one.events, ...other.events] }
    expect(stateOf(both, [out('b')], 'b')).toMatchObject({ state: 'here', isOut: false })
    other.undo(40, back)
    const again = { ...one, events: [...one.events, ...other.events] }
    expect(stateOf(again, [out('b')], 'b')).toMatchObject({ state: 'out', isOut: true })
  })

  it('cannot be brought back by a second answer where the pitch itself has it out', () => {
    const phone = aPhone()
    phone.here('abcde')
    phone.begin()
    phone.state('b', 'out', 20)
    phone.tap(30, { kind: 'register', playerId: 'b', state: 'here', secondAnswer: true })
    expect(stateOf(phone, [], 'b')).toMatchObject({ isOut: true })
  })
})

describe('what the pitch itself wrote into the book', () => {
  it('does not come back from there once it was taken back at the pitch', () => {
    const phone = aPhone()
    phone.here('abcde')
    phone.begin()
    const tapped = phone.state('b', 'out', 20)
    phone.undo(30, tapped, true)
    expect(stateOf(phone, [out('b', 20)], 'b')).toMatchObject({ state: 'here', isOut: false })
  })

  it('nor from a new face that was joined to somebody', () => {
    expect(marksInBook([out('b')], new Set(['b'])).size).toBe(0)
  })
})

describe('who does not play by the book', () => {
  it('does not until it is tapped as here', () => {
    const phone = aPhone()
    const register: RegisterLine[] = [{ playerId: 'c', from: 0, to: 3600, state: 'notPlaying' }]
    expect(stateOf(phone, register, 'c')?.state).toBe('notPlaying')
    phone.here('c')
    expect(stateOf(phone, register, 'c')?.state).toBe('here')
  })
})
