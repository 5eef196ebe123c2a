import { describe, expect, it } from 'vitest'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import { aPhone, aPlan, aPlannedTurn, stateOf } from '../support/pitch-builder'

const letters = 'abcdef'
const turns = [
  aPlannedTurn(0, 'ab/c'),
  aPlannedTurn(0, 'cd/e'),
  aPlannedTurn(1, 'ea/b'),
  aPlannedTurn(2, 'bc/d'),
]
const plan = aPlan(turns)

/** A practice with something of everything, tapped ball by ball but for its first round. */
function aPractice() {
  const phone = aPhone()
  phone.here('abcd')
  phone.begin()
  phone.done(150, 0, turns.slice(0, 2))
  phone.here('f', 160)
  phone.tap(170, { kind: 'passed', turn: 2, playerId: 'f', role: 'attack' })
  phone.tap(175, { kind: 'choice', turn: 2, by: 'attack', size: 0, side: 0 })
  const start = phone.start(180, 2, 'da/b')
  phone.change(200, start, 'dc/b')
  phone.tap(240, { kind: 'turnEnd', start, endings: [{ station: 0, endingId: 'g', points: 3, side: 0 }] })
  phone.state('b', 'out', 245)
  phone.tap(250, { kind: 'points', round: 0, side: 1, points: 2 })
  phone.stop(300)
  return afterTheWhistle(stateOf(plan, letters, phone))
}

describe('after the whistle', () => {
  it('points and choices belong to the sides, round by round and in all', () => {
    const { points, pointsInAll, choices } = aPractice()
    expect(points).toEqual([
      { round: 0, side: 1, points: 2 },
      { round: 1, side: 0, points: 3 },
    ])
    expect(pointsInAll).toEqual([
      { side: 1, points: 2 },
      { side: 0, points: 3 },
    ])
    expect(choices).toMatchObject([{ turn: 2, by: 'attack', size: 0, side: 0 }])
  })

  it('who got to choose is who attacked in a turn that the attackers chose, of all with a place in it', () => {
    const counts = new Map(aPractice().choosers.map(({ playerId, ...own }) => [playerId, own]))
    expect(counts).toEqual(
      new Map([
        ['a', { chose: 1, choiceTurns: 1 }],
        ['c', { chose: 1, choiceTurns: 1 }],
        ['d', { chose: 1, choiceTurns: 1 }],
        ['b', { chose: 0, choiceTurns: 1 }],
      ]),
    )
  })

  it('the ball was in play for the turns’ seconds, as a part of the whole length', () => {
    expect(aPractice().ballInPlay).toEqual({ seconds: 180, share: 0.6 })
  })

  it('everyone’s turns, minutes, passes and longest wait by the clock', () => {
    const { players, longestWait } = aPractice()
    const of = (id: string) => players.find(({ playerId }) => playerId === id)
    expect(of('a')).toMatchObject({
      turns: { attack: 2, defend: 0, keep: 0, rest: 1 },
      seconds: { attack: 80, defend: 0, keep: 0, rest: 100 },
      longestWait: { from: 75, to: 180 },
    })
    expect(of('f')).toMatchObject({
      turns: { attack: 0, rest: 1 },
      passes: 1,
      longestWait: { from: 160, to: 240 },
    })
    expect(of('c')?.longestWait).toEqual({ playerId: 'c', from: 150, to: 200 })
    expect(of('e')).toBeUndefined()
    // b waits from 75 to 180, as long as a: of equals the first of the register.
    expect(longestWait).toEqual({ playerId: 'a', from: 75, to: 180 })
  })

  it('what was otherwise than planned', () => {
    expect(aPractice().differences).toEqual([
      { kind: 'stoppedAfterRound', round: 1 },
      { kind: 'missing', playerId: 'e' },
      { kind: 'extra', playerId: 'f', from: 160 },
      { kind: 'changedDuringTurn', turn: 2, at: 200 },
    ])
  })

  it('who came late, who left, and rounds that were shorter or longer', () => {
    const phone = aPhone()
    phone.here('abcd')
    phone.begin()
    phone.done(150, 0, turns.slice(0, 1))
    phone.here('e', 160)
    phone.state('a', 'out', 200)
    phone.done(300, 1, [...turns.slice(2, 3), aPlannedTurn(1, 'cd/e')])
    phone.tap(310, {
      kind: 'replan',
      fromTurn: 3,
      turns: [aPlannedTurn(2, 'bd/e')],
      sentence: 'As fair as four allow.',
    })
    phone.done(400, 2, [aPlannedTurn(2, 'bd/e')])
    const { differences } = afterTheWhistle(stateOf(plan, letters, phone))
    expect(differences).toEqual([
      { kind: 'fewerTurns', round: 0, played: 1, planned: 2 },
      { kind: 'moreTurns', round: 1, played: 2, planned: 1 },
      { kind: 'left', playerId: 'a', at: 200, isOut: true },
      { kind: 'late', playerId: 'e', from: 160 },
      { kind: 'changedDuringTurn', turn: 2, at: 200 },
      { kind: 'plannedAnew', sentence: 'As fair as four allow.' },
    ])
  })

  it('played as planned nothing was otherwise', () => {
    const phone = aPhone()
    phone.here('abcde')
    phone.begin()
    for (const round of [0, 1, 2])
      phone.done(
        200 * (round + 1),
        round,
        turns.filter((turn) => turn.round === round),
      )
    expect(afterTheWhistle(stateOf(plan, letters, phone)).differences).toEqual([])
  })
})
