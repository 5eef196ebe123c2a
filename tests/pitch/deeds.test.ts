import { describe, expect, it } from 'vitest'
import { bookOfPitch } from '#pitch/book-of-pitch'
import { runningTotals } from '#pitch/running-totals'
import { longestWaitUpTo } from '#pitch/running-waits'
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

/** Two rounds of three and two balls for five players. */
const turns = [
  aPlannedTurn(0, 'ab/c'),
  aPlannedTurn(0, 'cd/e'),
  aPlannedTurn(0, 'ea/b'),
  aPlannedTurn(1, 'bc/d/a'),
  aPlannedTurn(1, 'de/b/a'),
]
const plan = aPlan(turns)
const letters = 'abcde'
const asideOf = ({ setAside }: ReturnType<typeof stateOf>) => setAside.map(({ id, why }) => `${id} ${why}`)

/** A phone with the register taken and the practice begun. */
function begun(deviceId = 'p1') {
  const phone = aPhone(deviceId)
  phone.here(letters)
  phone.begin()
  return phone
}

describe('begin and stop', () => {
  it('nothing has begun before the first tap', () => {
    const phone = aPhone()
    phone.here('ab')
    const state = stateOf(plan, letters, phone)
    expect([state.status, state.beganAt, state.endedAt]).toEqual(['notBegun', null, null])
    expect(state.next?.index).toBe(0)
  })

  it('of two phones the first tap holds', () => {
    const [one, other] = [aPhone('p1'), aPhone('p2')]
    one.begin(2)
    const second = other.begin(5)
    one.stop(600)
    const third = other.stop(601)
    const state = stateOf(plan, letters, one, other)
    expect([state.status, state.beganAt, state.endedAt]).toEqual(['ended', kickOff + 2000, kickOff + 600_000])
    expect(asideOf(state)).toEqual([`${second} alreadyBegun`, `${third} alreadyStopped`].sort())
  })

  it('a practice that nobody began began with its first ball, or as long before its first round’s end as planned', () => {
    const balls = aPhone()
    balls.end(100, balls.start(40, 0, 'ab/c'))
    expect(stateOf(plan, letters, balls).beganAt).toBe(kickOff + 40_000)
    const rounds = aPhone()
    rounds.done(600, 0, turns.slice(0, 3))
    const state = stateOf(plan, letters, rounds)
    expect(state.beganAt).toBe(kickOff + (600 - 210) * 1000)
    expect(playedText(state)).toEqual(['0-60 ab/c', '75-135 cd/e', '150-210 ea/b'])
  })

  it('a stop after which more was played is none', () => {
    const phone = begun()
    const stop = phone.stop(100)
    phone.done(400, 0, turns.slice(0, 3))
    const state = stateOf(plan, letters, phone)
    expect(state.status).toBe('running')
    expect(asideOf(state)).toEqual([`${stop} wentOn`])
  })

  it('a stop ends the ball that is being played', () => {
    const phone = begun()
    phone.start(10, 0, 'ab/c')
    phone.stop(130)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['10-130 ab/c'])
    expect([state.live, state.next]).toEqual([null, null])
  })
})

describe('a round that is done', () => {
  it('lays its balls back from the tap with their lengths and gaps', () => {
    const phone = begun()
    phone.done(400, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, phone))).toEqual([
      '190-250 ab/c',
      '265-325 cd/e',
      '340-400 ea/b',
    ])
  })

  it('of fewer balls is over with them, and the next round comes', () => {
    const phone = begun()
    phone.done(400, 0, turns.slice(0, 2))
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['265-325 ab/c', '340-400 cd/e'])
    expect([state.next?.index, state.nextRound?.round, state.nextRound?.turns.length]).toEqual([3, 1, 2])
    expect(state.roundsDone).toEqual([0])
  })

  it('squeezes them in proportion where there was less time, never before the first second or the round before', () => {
    const phone = begun()
    phone.done(105, 0, turns.slice(0, 3))
    phone.done(150, 1, turns.slice(3))
    expect(playedText(stateOf(plan, letters, phone))).toEqual([
      '0-30 ab/c',
      '38-68 cd/e',
      '75-105 ea/b',
      '105-125 bc/d/a',
      '130-150 de/b/a',
    ])
  })

  it('tapped on two phones is done once: the first holds', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    one.done(400, 0, turns.slice(0, 3))
    const late = other.done(402, 0, turns.slice(0, 2))
    const state = stateOf(plan, letters, one, other)
    expect(playedText(state)).toHaveLength(3)
    expect(asideOf(state)).toEqual([`${late} sameRound`])
  })

  it('leaves balls that were tapped one by one where they were', () => {
    const phone = begun()
    phone.end(160, phone.start(100, 1, 'ce/d'))
    phone.done(400, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, phone))).toEqual(['40-100 ab/c', '100-160 ce/d', '340-400 ea/b'])
  })

  it('tapped just after a later one was played before it, tapped long after it was played after it', () => {
    const soon = begun()
    soon.done(600, 1, turns.slice(3))
    soon.done(605, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, soon)).map((text) => text.split(' ')[1])).toEqual([
      'ab/c',
      'cd/e',
      'ea/b',
      'bc/d/a',
      'de/b/a',
    ])
    const later = begun()
    later.done(300, 1, turns.slice(3))
    later.done(600, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, later)).map((text) => text.split(' ')[1])).toEqual([
      'bc/d/a',
      'de/b/a',
      'ab/c',
      'cd/e',
      'ea/b',
    ])
  })

  it('tapped on one phone just after another has started the next ball was over before that', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    other.start(500, 3, 'bc/d/a')
    one.done(505, 0, turns.slice(0, 3))
    const state = stateOf(plan, letters, one, other)
    expect(playedText(state)).toEqual(['290-350 ab/c', '365-425 cd/e', '440-500 ea/b'])
    expect(state.live?.index).toBe(3)
  })

  it('of more balls than planned keeps them all', () => {
    const phone = begun()
    phone.done(600, 0, [...turns.slice(0, 3), aPlannedTurn(0, 'ba/c')])
    phone.done(900, 1, turns.slice(3))
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toHaveLength(6)
    expect(state.played.map(({ round }) => round)).toEqual([0, 0, 0, 0, 1, 1])
  })
})

describe('a ball tapped by itself', () => {
  it('goes on until it is ended, and the next one follows', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    const during = stateOf(plan, letters, phone)
    expect([during.live?.eventId, during.live?.start, during.next?.index]).toEqual([start, 10, 1])
    expect(during.waiting.map(({ playerId }) => playerId)).toEqual(['d', 'e'])
    phone.end(75, start)
    const after = stateOf(plan, letters, phone)
    expect([after.live, playedText(after)]).toEqual([null, ['10-75 ab/c']])
    expect(after.next).toMatchObject({ index: 1, off: ['a', 'b'] })
    expect(after.next?.on.map(({ playerId }) => playerId)).toEqual(['d', 'e'])
    expect(after.next?.moved).toEqual([
      { playerId: 'c', station: 0, role: 'attack', from: { station: 0, role: 'defend' } },
    ])
  })

  it('started on two phones started with the first, and either phone ends it', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    one.start(10, 0, 'ab/c')
    const second = other.start(12, 0, 'ab/d')
    other.end(70, second)
    const state = stateOf(plan, letters, one, other)
    expect(playedText(state)).toEqual(['10-70 ab/c'])
    expect(asideOf(state)).toEqual([`${second} sameTurn`])
  })

  it('ended by a clock that says before its start lasted as long as planned', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    const start = one.start(10, 0, 'ab/c')
    other.end(8, start)
    expect(playedText(stateOf(plan, letters, one, other))).toEqual(['10-70 ab/c'])
    one.start(40, 1, 'cd/e')
    expect(playedText(stateOf(plan, letters, one, other))).toEqual(['10-40 ab/c'])
  })

  it('that nobody ended was over when the next one began, after as long as planned', () => {
    const phone = begun()
    phone.start(10, 0, 'ab/c')
    phone.start(200, 1, 'cd/e')
    expect(playedText(stateOf(plan, letters, phone))).toEqual(['10-70 ab/c'])
    expect(playedText({ played: bookPlayed(phone) })).toEqual(['10-70 ab/c', '200-260 cd/e'])
  })

  it('started and ended in one breath is a slip, and does not stand in the way of the ball itself', () => {
    const phone = begun()
    const slip = phone.start(10, 0, 'ab/c')
    phone.end(10, slip)
    expect(stateOf(plan, letters, phone).next?.index).toBe(0)
    phone.end(80, phone.start(20, 0, 'ab/c'))
    expect(playedText(stateOf(plan, letters, phone))).toEqual(['20-80 ab/c'])
  })

  it('carries how it ended in each area, as was said last', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    const goal = { station: 0, endingId: 'goal', points: 2, side: 'attack' as const }
    phone.end(70, start)
    phone.tap(75, { kind: 'turnEnd', start, endings: [{ ...goal, points: 1 }] })
    phone.tap(80, { kind: 'turnEnd', start, endings: [goal] })
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['10-70 ab/c'])
    expect(state.points).toEqual([{ round: 0, side: 'attack', points: 2 }])
    expect(state.setAside).toEqual([])
  })
})

/** Turns of the book as if they were played turns, for their text. */
function bookPlayed(phone: ReturnType<typeof aPhone>) {
  const state = stateOf(plan, letters, phone)
  return bookOfPitch(state).turns.map(({ start, end, stations }) => ({
    ...(state.played[0] as (typeof state.played)[number]),
    parts: [{ start, end, stations }] as const,
  }))
}

describe('changes during a ball', () => {
  it('make it two parts of one turn', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    phone.change(30, start, 'ad/c')
    phone.end(70, start)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['10-30 ab/c | 30-70 ad/c'])
    const { turns: inBook } = bookOfPitch(state)
    expect(inBook.map(({ start: from, end, continuesTurn }) => [from, end, continuesTurn])).toEqual([
      [10, 30, false],
      [30, 70, true],
    ])
    const totals = new Map(runningTotals(state, 100).map((own) => [own.playerId, own.turns]))
    expect([totals.get('a')?.attack, totals.get('b')?.attack, totals.get('d')?.attack]).toEqual([1, 1, 1])
    expect([totals.get('b')?.rest, totals.get('d')?.rest, totals.get('e')?.rest]).toEqual([0, 0, 1])
  })

  it('of no length are none: of two at one second the later holds, one at the start holds from it', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    phone.change(10, start, 'ae/c')
    phone.change(30, start, 'ad/c')
    phone.change(30, start, 'ad/e')
    phone.end(70, start)
    expect(playedText(stateOf(plan, letters, phone))).toEqual(['10-30 ae/c | 30-70 ad/e'])
  })

  it('by a clock that says before the start hold from it; after the end they are set aside', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    const start = one.start(10, 0, 'ab/c')
    other.change(8, start, 'ad/c')
    one.end(70, start)
    const late = other.change(71, start, 'ae/c')
    const state = stateOf(plan, letters, one, other)
    expect(playedText(state)).toEqual(['10-70 ad/c'])
    expect(asideOf(state)).toEqual([`${late} alreadyEnded`])
  })

  it('end the place of who leaves at that second, for the substitute or for nobody', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    phone.state('b', 'gone', 30)
    const gone = stateOf(plan, letters, phone)
    expect(gone.live?.stations.map(areaText)).toEqual(['a/c'])
    expect(gone.live?.vacant).toEqual([{ playerId: 'b', station: 0, role: 'attack' }])
    phone.change(34, start, 'ad/c')
    phone.end(70, start)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['10-30 ab/c | 30-34 a/c | 34-70 ad/c'])
    expect(bookOfPitch(state).register).toContainEqual({ playerId: 'b', state: 'here', from: 0, to: 30 })
  })

  it('put nobody into two places', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/a')
    phone.end(70, start)
    expect(playedText(stateOf(plan, letters, phone))).toEqual(['10-70 ab/'])
  })
})

describe('changes during a round that is tapped once', () => {
  const swapped = (second: number, tapAt: number) => {
    const phone = begun()
    const after = [
      aPlannedTurn(0, 'eb/c'),
      aPlannedTurn(0, 'cd/a'),
      aPlannedTurn(0, 'ae/b'),
      ...turns.slice(3),
    ]
    phone.tap(second, { kind: 'replan', fromTurn: 0, turns: after, sentence: 'Swapped.' })
    phone.done(tapAt, 0, after.slice(0, 3))
    return playedText(stateOf(plan, letters, phone))
  }

  it('hold from their second: the balls before it, and that of the second, begin with the old places', () => {
    expect(swapped(100, 210)).toEqual(['0-60 ab/c', '75-100 cd/e | 100-135 cd/a', '150-210 ae/b'])
  })

  it('hold for the whole round where it was played after them', () => {
    expect(swapped(100, 310)).toEqual(['100-160 eb/c', '175-235 cd/a', '250-310 ae/b'])
    expect(swapped(100, 290)).toEqual(['100-154 eb/c', '168-222 cd/a', '236-290 ae/b'])
  })

  it('of a phone that did not know the new plan hold as that phone said', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    other.tap(100, {
      kind: 'replan',
      fromTurn: 1,
      turns: [aPlannedTurn(0, 'ed/c'), ...turns.slice(2)],
      sentence: '',
    })
    one.done(210, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, one, other))).toEqual([
      '0-60 ab/c',
      '75-135 cd/e',
      '150-210 ea/b',
    ])
  })

  it('end the place of who leaves', () => {
    const phone = begun()
    phone.state('d', 'gone', 90)
    phone.done(210, 0, turns.slice(0, 3))
    expect(playedText(stateOf(plan, letters, phone))).toEqual([
      '0-60 ab/c',
      '75-90 cd/e | 90-135 c/e',
      '150-210 ea/b',
    ])
  })
})

describe('the register', () => {
  const lines = (phone: ReturnType<typeof aPhone>, playerId: string) =>
    bookOfPitch(stateOf(plan, letters, phone))
      .register.filter((line) => line.playerId === playerId)
      .map(({ from, to, state }) => `${from}-${to} ${state}`)

  it('tapped before the practice holds from its first second, and each later tap from its own', () => {
    const phone = begun()
    phone.state('a', 'notPlaying', 100)
    phone.state('a', 'here', 160)
    phone.state('a', 'gone', 400)
    phone.stop(600)
    expect(lines(phone, 'a')).toEqual(['0-100 here', '100-160 notPlaying', '160-400 here'])
    expect(lines(phone, 'b')).toEqual(['0-600 here'])
  })

  it('has nobody who was not tapped, once anybody was', () => {
    const phone = aPhone()
    phone.here('abc')
    phone.begin()
    phone.end(70, phone.start(10, 0, 'ab/d'))
    phone.stop(600)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['10-70 ab/'])
    expect(lines(phone, 'd')).toEqual([])
    expect(state.players.find(({ playerId }) => playerId === 'd')?.state).toBe('missing')
  })

  it('that nobody took has everyone who had a place, but for who was tapped otherwise', () => {
    const phone = aPhone()
    phone.begin()
    phone.state('b', 'gone', 100)
    phone.done(210, 0, turns.slice(0, 3))
    phone.stop(600)
    expect(lines(phone, 'a')).toEqual(['0-600 here'])
    expect(lines(phone, 'b')).toEqual(['0-100 here'])
  })

  it('begun in mid-practice takes nothing from those who had a place before it; whoever is tapped first came then', () => {
    const phone = aPhone()
    phone.begin()
    phone.done(210, 0, turns.slice(0, 3))
    phone.state('e', 'here', 300)
    phone.here('abc', 320)
    phone.stop(600)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['0-60 ab/c', '75-135 cd/', '150-210 a/b'])
    expect(lines(phone, 'a')).toEqual(['0-300 here', '320-600 here'])
    expect(lines(phone, 'd')).toEqual(['0-300 here'])
    expect(lines(phone, 'e')).toEqual(['300-600 here'])
    expect(state.players.find(({ playerId }) => playerId === 'd')).toMatchObject({
      state: 'missing',
      isAssumed: true,
    })
  })

  it('of taps that contradict each other the later holds, whatever phone it was', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    other.state('a', 'gone', 100)
    one.state('a', 'here', 101)
    one.state('b', 'here', 200)
    other.state('b', 'gone', 201)
    const state = stateOf(plan, letters, one, other)
    expect(state.players.slice(0, 2).map((player) => player.state)).toEqual(['here', 'gone'])
  })

  it('knows who came late', () => {
    const phone = aPhone()
    phone.here('abcd')
    phone.begin()
    phone.start(10, 0, 'ab/c')
    phone.state('e', 'here', 50)
    const late = stateOf(plan, letters, phone).players.filter(({ isLate }) => isLate)
    expect(late.map(({ playerId, since }) => [playerId, since])).toEqual([['e', 50]])
  })

  it('takes a new face in one tap, with a place from then on', () => {
    const phone = begun()
    phone.tap(100, { kind: 'guest', playerId: 'z', name: 'Noor' })
    phone.end(260, phone.start(200, 0, 'az/c'))
    phone.stop(600)
    const book = bookOfPitch(stateOf(plan, letters, phone))
    expect(book.guests).toEqual([{ playerId: 'z', name: 'Noor' }])
    expect(lines(phone, 'z')).toEqual(['100-600 here'])
    expect(book.turns[0]?.stations).toEqual([area('az/c')])
  })

  it('waits for the name of a guest that has not arrived', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    other.tap(100, { kind: 'guest', playerId: 'z', name: 'Noor' })
    const gone = one.state('z', 'gone', 200)
    expect(asideOf(stateOf(plan, letters, one))).toEqual([`${gone} unknownPlayer`])
    const both = stateOf(plan, letters, one, other)
    expect(both.setAside).toEqual([])
    expect(both.players.at(-1)).toMatchObject({ playerId: 'z', state: 'gone', isGuest: true })
  })
})

describe('out for today', () => {
  const out = () => {
    const phone = begun()
    return { phone, id: phone.state('a', 'out', 100) }
  }
  const isOut = (phone: ReturnType<typeof aPhone>) => stateOf(plan, letters, phone).players[0]?.isOut

  it('ends the place at that second, and nothing but going home follows on it', () => {
    const { phone } = out()
    const here = phone.state('a', 'here', 110)
    const notPlaying = phone.state('a', 'notPlaying', 120)
    phone.end(200, phone.start(140, 0, 'ab/c'))
    phone.tap(210, { kind: 'replan', fromTurn: 1, turns: [aPlannedTurn(0, 'ac/e')], sentence: '' })
    phone.state('a', 'gone', 300)
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['140-200 b/c'])
    expect(state.next?.stations.map(areaText)).toEqual(['c/e'])
    expect(state.next?.missing).toEqual([{ playerId: 'a', station: 0, role: 'attack' }])
    expect(asideOf(state)).toEqual([`${here} isOut`, `${notPlaying} isOut`])
    expect(state.players[0]).toMatchObject({ state: 'gone', isOut: true })
  })

  it('is undone by an undo with a second answer alone', () => {
    const { phone, id } = out()
    const plain = phone.undo(110, id)
    expect(isOut(phone)).toBe(true)
    expect(asideOf(stateOf(plan, letters, phone))).toEqual([`${plain} isOut`])
    phone.undo(120, id, true)
    expect(isOut(phone)).toBe(false)
  })

  it('stands again when that undo is undone', () => {
    const { phone, id } = out()
    const undo = phone.undo(120, id, true)
    phone.undo(130, undo)
    expect(isOut(phone)).toBe(true)
  })

  it('asks for the second answer where it is offered to be taken back, with its repeats', () => {
    const { phone, id } = out()
    const again = aPhone('p2')
    const repeat = again.state('a', 'out', 103)
    const [last] = stateOf(plan, letters, phone, again).undoable
    expect(last).toMatchObject({ event: { id: repeat }, also: [id], needsSecondAnswer: true })
  })
})

describe('undo', () => {
  it('of as planned that two phones said brings back nothing: both are taken back', () => {
    const [one, other] = [aPhone('p1'), aPhone('p2')]
    const first = one.tap(600, { kind: 'asPlanned', turns })
    const second = other.tap(605, { kind: 'asPlanned', turns: turns.slice(0, 3) })
    const state = stateOf(plan, letters, one, other)
    expect([state.played.length, asideOf(state)]).toEqual([5, [`${second} alreadySaid`]])
    expect(state.undoable[0]).toMatchObject({ event: { id: first }, also: [second] })
  })

  it('takes back any number of steps, the last first', () => {
    const phone = begun()
    phone.done(300, 0, turns.slice(0, 3))
    phone.done(600, 1, turns.slice(3))
    for (let second = 701; second <= 708; second += 1) {
      const [step] = stateOf(plan, letters, phone).undoable
      if (step) phone.undo(second, step.event.id)
    }
    const state = stateOf(plan, letters, phone)
    expect([state.status, state.undoable, state.played]).toEqual(['notBegun', [], []])
    expect(state.redoable).toHaveLength(8)
    expect(state.redoable[0]?.event.deed.kind).toBe('roundDone')
  })

  it('of an undo puts the tap back', () => {
    const phone = begun()
    const done = phone.done(300, 0, turns.slice(0, 3))
    const before = stateOf(plan, letters, phone)
    const undo = phone.undo(310, done)
    expect(stateOf(plan, letters, phone).played).toEqual([])
    phone.undo(320, undo)
    expect(stateOf(plan, letters, phone)).toEqual(before)
  })

  it('of what is not here waits for it, and works though its clock says that it was before', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    const done = one.done(300, 0, turns.slice(0, 3))
    const undo = other.undo(290, done)
    const alone = stateOf(plan, letters, other)
    expect(asideOf(alone)).toEqual([`${undo} unknownEvent`])
    expect(stateOf(plan, letters, one, other).played).toEqual([])
  })

  it('by both phones takes back once, and both undos bring it back', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    const done = one.done(300, 0, turns.slice(0, 3))
    const undos = [one.undo(310, done), other.undo(311, done)]
    const state = stateOf(plan, letters, one, other)
    expect(state.redoable).toMatchObject([{ event: { id: done }, by: undos }])
    for (const id of undos) one.undo(320, id)
    expect(stateOf(plan, letters, one, other).played).toHaveLength(3)
  })

  it('in a ring says the same in any order', () => {
    const ring = (ids: readonly [string, string]) =>
      ids.map((id, index) => ({
        id,
        deviceId: 'p1',
        at: kickOff + index,
        deed: { kind: 'undo' as const, undoes: ids[1 - index] as string },
      }))
    const events = ring(['u1', 'u2'])
    expect(stateOf(plan, letters, { events })).toEqual(
      stateOf(plan, letters, { events: events.toReversed() }),
    )
  })

  it('names the taps of the same thing that would take the place of what it takes back', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    const first = one.start(10, 0, 'ab/c')
    const second = other.start(12, 0, 'ab/c')
    const [step] = stateOf(plan, letters, one, other).undoable
    expect(step).toMatchObject({ event: { id: first }, also: [second] })
    one.undo(20, first)
    one.undo(20, second)
    expect(stateOf(plan, letters, one, other).live).toBeNull()
  })
})

describe('new plans', () => {
  it('hold from their first turn on; of two at once the later, and what the earlier said before that', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    one.tap(100, {
      kind: 'replan',
      fromTurn: 1,
      turns: [aPlannedTurn(0, 'ae/b'), aPlannedTurn(0, 'bd/e')],
      sentence: 'One',
    })
    other.tap(101, { kind: 'replan', fromTurn: 2, turns: [aPlannedTurn(0, 'cb/a')], sentence: 'Other' })
    const state = stateOf(plan, letters, one, other)
    expect(state.turns.map(({ stations }) => stations.map(areaText).join(' '))).toEqual([
      'ab/c',
      'ae/b',
      'cb/a',
    ])
    expect(state.sentence).toBe('Other')
  })

  it('change nothing that was played', () => {
    const phone = begun()
    phone.done(210, 0, turns.slice(0, 3))
    phone.tap(300, { kind: 'replan', fromTurn: 3, turns: [aPlannedTurn(1, 'ce/a')], sentence: '' })
    const state = stateOf(plan, letters, phone)
    expect(playedText(state)).toEqual(['0-60 ab/c', '75-135 cd/e', '150-210 ea/b'])
    expect(state.next?.stations.map(areaText)).toEqual(['ce/a'])
  })
})

describe('what comes next', () => {
  it('says at a round’s start who keeps in it, area by area', () => {
    const keeping = aPlan([
      aPlannedTurn(0, 'a/b/c d/e/'),
      aPlannedTurn(0, 'b/a/c d/e/'),
      aPlannedTurn(0, 'b/c/a e/d/c'),
    ])
    expect(stateOf(keeping, letters, aPhone()).nextRound?.keepers).toEqual([
      { station: 0, playerIds: ['c', 'a'] },
      { station: 1, playerIds: ['c'] },
    ])
  })

  it('lists who waits, whoever waits longest first', () => {
    const phone = begun()
    phone.end(70, phone.start(10, 0, 'de/c'))
    phone.end(140, phone.start(80, 1, 'db/c'))
    phone.start(150, 2, 'cd/b')
    expect(stateOf(plan, letters, phone).waiting).toEqual([
      { playerId: 'a', since: 0 },
      { playerId: 'e', since: 70 },
    ])
  })
})

describe('waits by the clock', () => {
  it('count gaps between balls, from the last place to the next, of a turn missed at least', () => {
    const phone = begun()
    phone.end(70, phone.start(10, 0, 'ab/c'))
    phone.end(160, phone.start(100, 1, 'cd/e'))
    phone.end(250, phone.start(190, 2, 'ea/b'))
    const state = stateOf(plan, letters, phone)
    // a and b: from 70 to 190. d came on at 100, after a wait from the beginning; c and e played on, or had no turn to miss.
    expect(state.longestWait).toEqual({ playerId: 'a', from: 70, to: 190 })
    expect(longestWaitUpTo(state, 260)).toEqual({ playerId: 'a', from: 70, to: 190 })
    expect(longestWaitUpTo(state, 400)).toEqual({ playerId: 'c', from: 160, to: 400 })
  })

  it('are none for who plays every ball, however long the time between them', () => {
    const phone = aPhone()
    phone.here('abc')
    phone.begin()
    phone.end(370, phone.start(310, 0, 'ab/c'))
    phone.end(960, phone.start(900, 1, 'ca/b'))
    const state = stateOf(plan, 'abc', phone)
    expect([state.longestWait, longestWaitUpTo(state, 2000)]).toEqual([null, null])
  })

  it('end with the player’s going, and begin with its coming', () => {
    const phone = begun()
    phone.state('d', 'gone', 65)
    phone.end(70, phone.start(10, 0, 'ab/c'))
    const own = stateOf(plan, 'abcd', phone)
    expect(own.longestWait).toEqual({ playerId: 'd', from: 0, to: 65 })
  })
})

describe('passes, choices and points', () => {
  it('a pass is as long as its turn was, once though two phones wrote it down', () => {
    const [one, other] = [begun('p1'), aPhone('p2')]
    one.tap(5, { kind: 'passed', turn: 0, playerId: 'd', role: 'attack' })
    other.tap(6, { kind: 'passed', turn: 0, playerId: 'd', role: 'attack' })
    one.tap(6, { kind: 'passed', turn: 1, playerId: 'e', role: 'keep' })
    one.end(55, one.start(10, 0, 'ab/c'))
    expect(bookOfPitch(stateOf(plan, letters, one, other)).passes).toEqual([
      { playerId: 'd', role: 'attack', lengthSeconds: 45 },
      { playerId: 'e', role: 'keep', lengthSeconds: 60 },
    ])
  })

  it('a choice of the attackers is written into the turn, the last that was said', () => {
    const phone = begun()
    phone.tap(5, { kind: 'choice', turn: 0, by: 'coach', size: 0, side: null })
    phone.tap(6, { kind: 'choice', turn: 0, by: 'attack', size: 1, side: 1 })
    phone.tap(7, { kind: 'choice', turn: 1, by: 'coach', size: 0, side: null })
    phone.end(55, phone.start(10, 0, 'ab/c'))
    phone.end(90, phone.start(60, 1, 'ab/c'))
    const state = stateOf(plan, letters, phone)
    expect(state.choices).toMatchObject([
      { turn: 0, by: 'attack', size: 1, side: 1 },
      { turn: 1, by: 'coach' },
    ])
    expect(bookOfPitch(state).turns.map(({ chosenBy }) => chosenBy)).toEqual(['attack', null])
  })

  it('points of a round are what was said last, beside those of balls tapped one by one', () => {
    const phone = begun()
    const start = phone.start(10, 0, 'ab/c')
    phone.tap(70, { kind: 'turnEnd', start, endings: [{ station: 0, endingId: 'g', points: 2, side: 0 }] })
    for (const points of [1, 2, 3]) phone.tap(80, { kind: 'points', round: 0, side: 0, points })
    phone.tap(81, { kind: 'points', round: 1, side: 1, points: 4 })
    expect(stateOf(plan, letters, phone).points).toEqual([
      { round: 0, side: 0, points: 5 },
      { round: 1, side: 1, points: 4 },
    ])
  })
})
