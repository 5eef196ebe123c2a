import { describe, expect, it } from 'vitest'
import type { Deed } from '#pitch/pitch-event'
import type { KnownPlayer, PitchViewer } from '#pitch/pitch-pack'
import { foldPitch } from '#pitch/pitch-state'
import type { PracticePlan } from '#planning/practice-plan'
import { stepWords } from '#ui/pitch/deed-words'
import { type Moves, movesOf } from '#ui/pitch/moves'
import { aPhone, aPlan, aPlannedTurn, area, rosterOf } from '../../support/pitch-builder'

const plan = aPlan([aPlannedTurn(0, 'ab/c d/e'), aPlannedTurn(0, 'fb/c a/e'), aPlannedTurn(0, 'ab/c/f d/e')])
const roster = rosterOf('abcdef')
const coach: PitchViewer = { kind: 'coach', name: 'Coach', mayReplan: true }
const players = (noKeepers = ''): readonly KnownPlayer[] =>
  roster.map((player) => ({ ...player, keeps: !noKeepers.includes(player.id), isMember: true }))

type Setting = {
  readonly plan?: PracticePlan
  readonly viewer?: PitchViewer
  readonly phone?: ReturnType<typeof aPhone>
}

function begun() {
  const phone = aPhone()
  phone.here('abcdef')
  phone.begin()
  return phone
}

function moves(playerId: string, { plan: own = plan, viewer = coach, phone = begun() }: Setting = {}): Moves {
  const state = foldPitch(own, roster, phone.events)
  return movesOf(playerId, { pack: { players: players(), viewer }, state })
}

const placesOf = ([deed]: readonly Deed[]) =>
  deed?.kind === 'change' ? deed.stations : deed?.kind === 'replan' ? deed.turns[0]?.stations : undefined

describe('who leaves while a ball is played', () => {
  const phone = begun()
  phone.start(10, 0, 'ab/c d/e')
  phone.state('b', 'gone', 30)
  const left = moves('b', { phone })

  it('has no place any more, and whoever goes in gets it', () => {
    expect(left.own).toBeNull()
    expect(left.substitutes).toEqual(['f'])
    expect(placesOf(left.fill('f'))).toEqual([area('af/c'), area('d/e')])
  })

  it('leaves it empty where nobody goes in, with nothing to be said', () => {
    expect(left.fill(null)).toEqual([])
  })
})

describe('who may change places', () => {
  it('is everybody in another place, and for who waits everybody with one', () => {
    expect(moves('a').partners).toEqual(['f', 'c', 'd', 'e'])
    expect(moves('f').partners).toEqual(['a', 'b', 'c', 'd', 'e'])
    expect(placesOf(moves('a').swap('e'))).toEqual([area('eb/c'), area('d/a')])
  })

  it('never brings one into goal who does not keep, in any ball of the round that is left', () => {
    const own = {
      ...plan,
      players: plan.players.map((player) => ({ ...player, notInGoal: player.playerId === 'a' })),
    }
    expect(moves('a', { plan: own }).partners).toEqual(['c', 'd', 'e'])
    expect(moves('f', { plan: own }).partners).toEqual(['b', 'c', 'd', 'e'])
  })

  it('never brings two together who are kept apart', () => {
    const own: PracticePlan = { ...plan, apart: [['a', 'e']] }
    const apart = { ...own, turns: own.turns.slice(0, 1) }
    expect(moves('a', { plan: apart }).partners).toEqual(['f', 'c', 'e'])
    expect(moves('b', { plan: apart }).partners).toEqual(['f', 'c', 'd'])
  })

  it('is nobody on a helper’s phone, but in the ball that is played', () => {
    const viewer: PitchViewer = { kind: 'helper', name: 'Pim', mayReplan: false }
    expect(moves('a', { viewer })).toMatchObject({ partners: [], substitutes: [] })
    const phone = begun()
    phone.start(10, 0, 'ab/c d/e')
    expect(moves('a', { viewer, phone }).partners).toContain('f')
  })
})

it('one tap goes by the name of what was tapped', () => {
  const here = (playerId: string): Deed => ({ kind: 'register', playerId, state: 'here' })
  const anew: Deed = { kind: 'replan', fromTurn: 0, turns: [], sentence: 'New rotation for 5.' }
  const cast = { nameOf: (id: string) => id.toUpperCase() }
  expect(stepWords([{ kind: 'begin' }, anew, here('b'), here('a')], cast)).toBe('Begin')
  expect(stepWords([anew, { kind: 'register', playerId: 'a', state: 'gone' }], cast)).toBe('A gone')
  expect(stepWords([here('b'), here('a')], cast)).toBe('2 here')
  expect(stepWords([anew], cast)).toBe('new rotation')
  expect(stepWords([], cast)).toBe('')
})
