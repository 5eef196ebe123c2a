import { describe, expect, it } from 'vitest'
import { foldPitch } from '#pitch/pitch-state'
import type { PracticePlan } from '#planning/practice-plan'
import { castOf } from '#ui/pitch/cast'
import { aPhone, aPlan, aPlannedTurn, rosterOf } from '../../support/pitch-builder'

const bare = aPlan([aPlannedTurn(0, 'ab/cd'), aPlannedTurn(0, 'cd/ab')], {
  sides: { names: ['Green', 'Red'], swap: 'eachRound' },
})
const plan: PracticePlan = {
  ...bare,
  players: bare.players.map((player) => ({ ...player, side: 'ab'.includes(player.playerId) ? 0 : 1 })),
}

function sideOfNewFace(...areas: readonly string[]) {
  const phone = aPhone()
  phone.here('abcd')
  phone.begin()
  phone.tap(10, { kind: 'guest', playerId: 'z', name: 'Zed' })
  const turns = areas.map((one) => aPlannedTurn(0, one))
  phone.tap(11, { kind: 'replan', fromTurn: 0, turns, sentence: '' })
  const state = foldPitch(plan, rosterOf('abcd'), phone.events)
  return castOf(plan, state.players, state.turns).sideOf('z')
}

describe('the bib of a new face', () => {
  it('is that of those it plays with, whichever role they have', () => {
    expect(sideOfNewFace('ab/cd', 'zc/ab')).toBe(1)
    expect(sideOfNewFace('az/cd', 'cd/zb')).toBe(0)
    expect(sideOfNewFace('z/cd', 'cd/ab')).toBe(0)
  })

  it('is none where it plays for both sides, or for none yet', () => {
    expect(sideOfNewFace('az/cd', 'cz/ab')).toBeNull()
    expect(sideOfNewFace('ab/cd', 'cd/ab')).toBeNull()
  })
})
