import { describe, expect, it } from 'vitest'
import { foldPitch } from '#pitch/pitch-state'
import { roundDone, swapInRound, withoutPlayer } from '#ui/pitch/round-deeds'
import { aPhone, aPlan, aPlannedTurn, area, rosterOf } from '../../support/pitch-builder'

const plan = aPlan([
  aPlannedTurn(0, 'ab/c'),
  aPlannedTurn(0, 'bd/a'),
  aPlannedTurn(0, 'cd/b'),
  aPlannedTurn(1, 'ad/b'),
])
const roster = rosterOf('abcd')

describe('a round that is done', () => {
  it('names the balls played one by one before it, and so many of the rest', () => {
    const phone = aPhone()
    phone.here('abcd')
    phone.begin()
    phone.end(60, phone.start(10, 0, 'ab/c'))
    const state = foldPitch(plan, roster, phone.events)
    if (!state.nextRound) throw new Error('no round')
    const deed = roundDone(state, state.nextRound, 1)
    expect(deed).toEqual({ kind: 'roundDone', round: 0, turns: plan.turns.slice(0, 2) })
    phone.tap(200, deed)
    expect(foldPitch(plan, roster, phone.events).played.map(({ index }) => index)).toEqual([0, 1])
  })
})

describe('places', () => {
  it('are exchanged to the end of the round, also with somebody who waits, and not beyond it', () => {
    const { fromTurn, turns } = swapInRound(plan.turns, 1, ['a', 'd'])
    expect(fromTurn).toBe(1)
    expect(turns.map(({ stations }) => stations[0])).toEqual([area('ba/d'), area('ca/b'), area('ad/b')])
  })

  it('of who leaves go to whoever goes in, or stay empty', () => {
    expect(withoutPlayer([area('ab/c')], 'a', 'd')).toEqual([area('db/c')])
    expect(withoutPlayer([area('ab/c')], 'c', null)).toEqual([area('ab/')])
  })
})
