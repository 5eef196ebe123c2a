import { describe, expect, it } from 'vitest'
import { asPlannedDeed } from '#pitch/as-planned-deed'
import { bookOfPitch } from '#pitch/book-of-pitch'
import {
  aPhone,
  aPlan,
  aPlannedTurn,
  area,
  areaText,
  kickOff,
  playedText,
  stateOf,
} from '../support/pitch-builder'

const letters = 'abcde'
const turns = [
  aPlannedTurn(0, 'ab/c'),
  aPlannedTurn(0, 'cd/e'),
  aPlannedTurn(0, 'ea/b'),
  aPlannedTurn(1, 'bc/d'),
  aPlannedTurn(1, 'de/a'),
]
const plan = aPlan(turns)

describe('the length of a practice in the book', () => {
  const length = (known: number | null, ...taps: ((phone: ReturnType<typeof aPhone>) => void)[]) => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    for (const tap of taps) tap(phone)
    const { lengthSeconds, lastSecond } = bookOfPitch(stateOf(plan, letters, phone), { lengthSeconds: known })
    return [lengthSeconds, lastSecond]
  }

  it('is from the beginning to the stop, whatever was planned', () => {
    expect(length(3600, (phone) => phone.stop(4000))).toEqual([4000, 4000])
    expect(length(3600, (phone) => phone.stop(900))).toEqual([900, 900])
  })

  it('without a stop is what was known, but not less than was played', () => {
    const play = (phone: ReturnType<typeof aPhone>) => phone.done(400, 0, turns.slice(0, 3))
    expect(length(3600, play)).toEqual([3600, 3600])
    expect(length(300, play)).toEqual([400, 400])
    expect(length(null, play)).toEqual([null, 400])
  })
})

describe('the turns of the book', () => {
  it('carry their round’s title and the theme of the practice', () => {
    const phone = aPhone()
    phone.done(400, 0, turns.slice(0, 1))
    expect(bookOfPitch(stateOf(plan, letters, phone)).turns).toMatchObject([
      { round: 'Round 1', themeId: 'press', continuesWait: false, continuesTurn: false },
    ])
  })

  it('of a free game are two halves with one wait, however they are tapped, and changed within', () => {
    const halves = [aPlannedTurn(0, 'ab/cd', { gapSeconds: 0 }), aPlannedTurn(0, 'cd/ab', { gapSeconds: 0 })]
    const game = aPlan(halves)
    const design = {
      ...game.design,
      rounds: game.design.rounds.map((round) => ({ ...round, isFreeGame: true })),
    }
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    phone.state('d', 'gone', 100)
    phone.done(130, 0, halves)
    const { turns: inBook } = bookOfPitch(stateOf({ ...game, design }, letters, phone))
    expect(
      inBook.map(({ start, end, continuesWait, continuesTurn }) => [
        start,
        end,
        continuesWait,
        continuesTurn,
      ]),
    ).toEqual([
      [10, 70, false, false],
      [70, 100, true, false],
      [100, 130, false, true],
    ])
  })

  it('of a ball nobody ended in a practice nobody stopped last as long as planned', () => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    phone.start(10, 0, 'ab/c')
    expect(bookOfPitch(stateOf(plan, letters, phone)).turns).toMatchObject([{ start: 10, end: 70 }])
  })

  it.each([
    ['tapped', (phone: ReturnType<typeof aPhone>) => phone.end(70, phone.start(10, 0, 'ab/c'))],
    ['roundByRound', (phone: ReturnType<typeof aPhone>) => phone.done(600, 0, turns.slice(0, 3))],
    ['asPlanned', (phone: ReturnType<typeof aPhone>) => phone.tap(600, { kind: 'asPlanned', turns })],
    ['notWritten', (phone: ReturnType<typeof aPhone>) => phone.stop(600)],
  ] as const)('say how they were written: %s', (way, tap) => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    tap(phone)
    expect(bookOfPitch(stateOf(plan, letters, phone)).written).toBe(way)
  })

  it('written in several ways are written as most of them were, and of as many, as says less', () => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    phone.end(70, phone.start(10, 3, 'bc/d'))
    phone.done(600, 0, turns.slice(0, 1))
    expect(bookOfPitch(stateOf(plan, letters, phone)).written).toBe('roundByRound')
    phone.end(770, phone.start(710, 4, 'de/a'))
    expect(bookOfPitch(stateOf(plan, letters, phone)).written).toBe('tapped')
  })

  it('keep nobody out who is in the register, in a practice without a plan', () => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    phone.end(70, phone.start(10, 0, 'ab/c'))
    const book = bookOfPitch(stateOf(null, letters, phone))
    expect(book.turns).toMatchObject([
      { start: 10, end: 70, round: null, themeId: null, stations: [area('ab/c')] },
    ])
  })
})

describe('a practice that nobody tapped', () => {
  it('was as planned, up to the round it stopped after, each until it left', () => {
    const deed = asPlannedDeed(turns, {
      stoppedAfterRound: 0,
      left: [
        { playerId: 'b', afterRound: 0 },
        { playerId: 'e', afterRound: null },
      ],
    })
    expect(deed.turns).toEqual(turns.slice(0, 3))
    expect(deed.left).toEqual([
      { playerId: 'b', afterTurn: 3 },
      { playerId: 'e', afterTurn: 0 },
    ])
    const phone = aPhone()
    phone.tap(5000, deed)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['0-60 ab/c', '75-135 cd/', '150-210 a/b'])
    expect(bookOfPitch(state).register.map(({ playerId, from, to }) => `${playerId} ${from}-${to}`)).toEqual([
      'a 0-210',
      'b 0-210',
      'c 0-210',
      'd 0-210',
    ])
    expect(state.next).toMatchObject({ index: 3 })
  })

  it('all of it, with who left after a round in the middle', () => {
    const deed = asPlannedDeed(turns, { stoppedAfterRound: null, left: [{ playerId: 'c', afterRound: 0 }] })
    const phone = aPhone()
    phone.tap(5000, deed)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state).slice(3)).toEqual(['225-285 b/d', '300-360 de/a'])
    expect(bookOfPitch(state).register.find(({ playerId }) => playerId === 'c')?.to).toBe(210)
  })

  it('begun and stopped with the same tap took as long as planned, with the register as it was filled in', () => {
    const phone = aPhone()
    phone.here('abcd', 4990)
    phone.begin(5000)
    phone.tap(5000, { kind: 'asPlanned', turns })
    phone.stop(5000)
    const state = stateOf(plan, letters, phone)
    expect(state.beganAt).toBe(kickOff + (5000 - 360) * 1000)
    expect(playedText(state)[0]).toBe('0-60 ab/c')
    const book = bookOfPitch(state)
    expect([book.lengthSeconds, book.turns.at(-1)?.end]).toEqual([360, 360])
    expect(book.register.map(({ playerId, from, to }) => [playerId, from, to])).toEqual(
      [...'abcd'].map((id) => [id, 0, 360]),
    )
  })

  it('whose register was tapped as it went has those who came later and left earlier at their own seconds', () => {
    const long = turns.map((turn) => ({ ...turn, seconds: 600 }))
    const phone = aPhone()
    phone.here('ab', 5)
    phone.here('c', 65)
    phone.here('d', 1000)
    phone.state('c', 'gone', 1500)
    phone.tap(3060, { kind: 'asPlanned', turns: long })
    const register = bookOfPitch(stateOf(aPlan(long), letters, phone)).register
    expect(register.map(({ playerId, from, to }) => `${playerId} ${from}-${to}`)).toEqual([
      'a 0-3060',
      'b 0-3060',
      'c 0-1500',
      'd 1000-3060',
    ])
  })

  it('begun by a tap at its time is laid from there, and squeezed where there was less time', () => {
    const whole = aPhone()
    whole.here(letters)
    whole.begin()
    whole.tap(900, { kind: 'asPlanned', turns })
    expect(playedText(stateOf(plan, letters, whole))[0]).toBe('0-60 ab/c')
    const short = aPhone()
    short.here(letters)
    short.begin()
    short.tap(270, { kind: 'asPlanned', turns })
    expect(playedText(stateOf(plan, letters, short)).at(-1)).toBe('225-270 de/a')
  })

  it('keeps the balls that were tapped, and fills in the others around them', () => {
    const phone = aPhone()
    phone.here(letters)
    phone.begin()
    phone.end(180, phone.start(110, 2, 'ec/b'))
    phone.tap(900, { kind: 'asPlanned', turns })
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual([
      '0-49 ab/c',
      '61-110 cd/e',
      '110-180 ec/b',
      '180-240 bc/d',
      '255-315 de/a',
    ])
    expect(state.played.map(({ source }) => source)).toEqual([
      'asPlanned',
      'asPlanned',
      'tapped',
      'asPlanned',
      'asPlanned',
    ])
    expect(state.played.flatMap(({ parts }) => parts[0].stations).map(areaText)[2]).toBe('ec/b')
  })
})
