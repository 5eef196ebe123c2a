import { describe, expect, it } from 'vitest'
import { calledTurns, firstUncalled } from '#pitch/called-turns'
import { placedIn } from '#pitch/changeover'
import { foldPitch } from '#pitch/pitch-state'
import { planAnew } from '#pitch/plan-anew'
import { replanDeed } from '#pitch/replan-deed'
import { aPhone, aPlan, aPlannedTurn } from '../support/pitch-builder'

// Rules of our own (from the trial of a coach's evening): nothing that is called already changes.

const letters = 'abcde'
const turns = [
  ...['ab/c', 'bd/e', 'ca/d', 'de/a'].map((areas) => aPlannedTurn(0, areas)),
  ...['eb/c', 'ac/b', 'bd/e'].map((areas) => aPlannedTurn(1, areas)),
]
const shape = { attack: 2, defend: 1, keep: 0 }
const plan = aPlan(turns, {
  rounds: [4, 3].map((turnCount, round) => ({
    title: `Round ${round + 1}`,
    turnCount,
    turnSeconds: 60,
    gapSeconds: 15,
    stations: [shape],
  })),
})
const roster = [...letters, 'z'].map((id) => ({ id, name: id.toUpperCase() }))

function begun() {
  const phone = aPhone()
  phone.here(letters)
  phone.begin()
  return phone
}
const stateOf = (phone: ReturnType<typeof aPhone>) => foldPitch(plan, roster, phone.events)

describe('turns that are called', () => {
  it('are none before the beginning, the round on the screen, or the ball and the next one', () => {
    const waiting = aPhone()
    waiting.here(letters)
    expect(calledTurns(stateOf(waiting), false)).toBe(0)
    const phone = begun()
    expect([calledTurns(stateOf(phone), false), firstUncalled(stateOf(phone), false)]).toEqual([4, 4])
    expect([calledTurns(stateOf(phone), true), firstUncalled(stateOf(phone), true)]).toEqual([2, 2])
    phone.start(10, 0, 'ab/c')
    // A ball that is being played is played ball by ball, whatever this phone shows otherwise.
    expect([calledTurns(stateOf(phone), false), firstUncalled(stateOf(phone), false)]).toEqual([2, 2])
  })

  it.each([
    ['round by round', false, 4],
    ['ball by ball', true, 2],
  ])('have no place for who comes late, %s, and the first after them do', (_, isBallByBall, firstFree) => {
    const phone = begun()
    phone.state('z', 'here', 20)
    const state = { ...stateOf(phone), plan }
    const known = roster.map((player) => ({ ...player, keeps: true, isMember: true }))
    const anew = planAnew({ state, known, called: calledTurns(state, isBallByBall), tries: 4_000 })
    if (anew.outcome.kind !== 'planned') throw new Error('no plan')
    const made = replanDeed(anew.request, anew.outcome, { fromTurn: anew.fromTurn, sentence: '' }).turns
    const isPlaced = made.map(({ stations }) => placedIn(stations).some(({ playerId }) => playerId === 'z'))
    expect(anew.firstFree).toBe(firstFree)
    expect(isPlaced.slice(0, firstFree)).not.toContain(true)
    expect(isPlaced.slice(firstFree)).toContain(true)
    const placesIn = (all: typeof made) =>
      all
        .slice(0, firstFree)
        .map(({ stations }) => new Set(placedIn(stations).map((at) => JSON.stringify(at))))
    expect(placesIn(made)).toEqual(placesIn(turns))
  })
})
