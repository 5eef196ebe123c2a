import { describe, expect, it } from 'vitest'
import { checkLineUp } from '#lineup/check-line-up'
import { apartRule } from '#lineup/rules/apart-rule'
import { fixedRule } from '#lineup/rules/fixed-rule'
import { keeperRule } from '#lineup/rules/keeper-rule'
import { notYetRule } from '#lineup/rules/not-yet-rule'
import { placesRule } from '#lineup/rules/places-rule'
import { presenceRule } from '#lineup/rules/presence-rule'
import { noWishes } from '#match/format/line-wish'
import { planOf, smallLineUp } from '../../support/line-up-builder'

const plan = planOf('KK BB', 'BB MM', 'MM --', '-- KK')

describe('a line-up that keeps every rule', () => {
  it('is found without a fault', () => {
    expect(checkLineUp(smallLineUp(), plan)).toEqual([])
  })
})

describe('places', () => {
  it('are as many in every line as it has, no more and no fewer', () => {
    const twoBacks = planOf('KK BB', 'BB BM', 'MM --', '-- KK')
    expect(placesRule(smallLineUp(), twoBacks)).toEqual([
      { rule: 'places', window: 2, players: [0, 1] },
      { rule: 'places', window: 2, players: [] },
    ])
    const allFour = planOf('KK BB', 'BB MM', 'MM -F', '-- KK')
    expect(placesRule(smallLineUp(), allFour)).toEqual([{ rule: 'places', window: 3, players: [2] }])
  })

  it('in goal are for who may keep it', () => {
    const problem = smallLineUp({ players: [{}, {}, {}, { keeps: false }] })
    expect(keeperRule(problem, plan)).toEqual([
      { rule: 'keeper', window: 2, players: [3] },
      { rule: 'keeper', window: 3, players: [3] },
    ])
  })

  it('are for who is there', () => {
    const problem = smallLineUp({ players: [{}, { isThere: [false, true, true, true] }] })
    expect(presenceRule(problem, plan)).toEqual([{ rule: 'presence', window: 0, players: [1] }])
  })

  it('are not in a line that somebody does not play yet', () => {
    const problem = smallLineUp({ players: [{}, {}, { wishes: { ...noWishes, middle: 'notYet' } }] })
    expect(notYetRule(problem, plan).map(({ window, players }) => [window, ...players])).toEqual([
      [0, 2],
      [1, 2],
    ])
  })
})

describe('places that are held', () => {
  it('are as they are held: a line, on, or off', () => {
    const fixed = [
      { player: 0, window: 0, place: 'keeper' },
      { player: 0, window: 1, place: 'back' },
      { player: 1, window: 2, place: 'on' },
      { player: 2, window: 2, place: 'on' },
      { player: 2, window: 3, place: 'off' },
      { player: 3, window: 3, place: 'off' },
    ] as const
    expect(fixedRule(smallLineUp({ fixed }), plan)).toEqual([
      { rule: 'fixed', window: 1, players: [0] },
      { rule: 'fixed', window: 2, players: [2] },
      { rule: 'fixed', window: 3, players: [3] },
    ])
  })
})

describe('a pair kept apart', () => {
  it('is never on at the same time', () => {
    expect(apartRule(smallLineUp({ apart: [[2, 3]] }), plan)).toEqual([])
    expect(apartRule(smallLineUp({ apart: [[1, 2]] }), plan)).toEqual([
      { rule: 'apart', window: 0, players: [1, 2] },
      { rule: 'apart', window: 1, players: [1, 2] },
    ])
  })
})
