import { describe, expect, it } from 'vitest'
import { afterTheWhistle } from '#pitch/after-the-whistle'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import { castOf } from '#ui/pitch/cast'
import { choicesOf, oneLess, oneMore, roundDoneDeeds, steppingOff } from '#ui/pitch/round-choices'
import { aPhone, aPlan, aPlannedTurn, playedText, rosterOf } from '../../support/pitch-builder'

// A rule of our own (no source): a round tapped once says how often each size was chosen, in the order of the taps.

const sizes = [
  { shape: { attack: 1, defend: 1, keep: 0 }, points: 2 },
  { shape: { attack: 2, defend: 1, keep: 0 }, points: 1 },
]
const turns = [aPlannedTurn(0, 'ab/c'), aPlannedTurn(0, 'ac/b'), aPlannedTurn(0, 'bc/a')]
const bare = aPlan(turns)
const [round] = bare.design.rounds
if (!round) throw new Error('no round')
const plan = {
  ...bare,
  design: { ...bare.design, rounds: [{ ...round, choice: { by: 'attack', sizes } }] },
} as const
const roster = rosterOf('abc')

function begun() {
  const phone = aPhone()
  phone.here('abc')
  phone.begin()
  let second = 20
  const state = () => foldPitch(plan, roster, phone.events)
  const next = (): { state: PitchState; round: UpcomingRound } => {
    const now = state()
    if (!now.nextRound) throw new Error('no round')
    return { state: now, round: now.nextRound }
  }
  const cast = castOf(plan, state().players)
  const tapAll = (deeds: readonly Parameters<typeof phone.tap>[1][]) => {
    for (const deed of deeds) phone.tap(second++, deed)
  }
  const chosen = (size: number) => {
    const { state: now, round: own } = next()
    tapAll(oneMore(size, { round: own, choices: now.choices, cast }))
  }
  return { phone, state, next, cast, tapAll, chosen }
}
const said = ({ next }: ReturnType<typeof begun>) => {
  const { state, round: own } = next()
  return choicesOf(own, state.choices).map((choice) => choice?.size ?? null)
}

describe('sizes chosen in a round that is tapped once', () => {
  it('go to its balls in the order they are tapped, no more than there are balls, and are taken back from the last', () => {
    const practice = begun()
    for (const size of [0, 1, 0, 1]) practice.chosen(size)
    expect(said(practice)).toEqual([0, 1, 0])
    const { state, round: own } = practice.next()
    practice.tapAll(oneLess(0, { round: own, choices: state.choices }))
    expect(said(practice)).toEqual([0, 1, null])
    expect(oneLess(0, { round: own, choices: [] })).toEqual([])
  })

  it('give each ball its places; of what nobody tapped the planned size is written, and who chose is counted', () => {
    const practice = begun()
    practice.chosen(0)
    const { state, round: own } = practice.next()
    practice.tapAll([
      ...roundDoneDeeds(state, { round: own, balls: 3, cast: practice.cast }),
      { kind: 'stop' },
    ])
    const done = practice.state()
    // Of two who had as many turns the last named stepped off: b.
    expect(playedText(done).map((text) => text.split(' ')[1])).toEqual(['a/c', 'ac/b', 'bc/a'])
    expect(done.choices.map(({ size }) => size)).toEqual([0, 1, 1])
    const { choosers } = afterTheWhistle(done)
    expect(new Map(choosers.map(({ playerId, chose }) => [playerId, chose]))).toEqual(
      new Map([
        ['a', 2],
        ['b', 1],
        ['c', 2],
      ]),
    )
  })

  it('of balls that were not played go', () => {
    const practice = begun()
    for (const size of [0, 0, 0]) practice.chosen(size)
    const { state, round: own } = practice.next()
    practice.tapAll(roundDoneDeeds(state, { round: own, balls: 1, cast: practice.cast }))
    expect(practice.state().choices.map(({ turn }) => turn)).toEqual([0])
  })

  it('say who would step off', () => {
    const { state, round: own } = begun().next()
    const [small, planned] = sizes
    if (!small || !planned) throw new Error('no sizes')
    expect([steppingOff(state, own, small), steppingOff(state, own, planned)]).toEqual([['b'], []])
  })
})
