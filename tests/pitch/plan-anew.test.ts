import { describe, expect, it } from 'vitest'
import { placedIn } from '#pitch/changeover'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import { type Anew, planAnew } from '#pitch/plan-anew'
import { replanDeed } from '#pitch/replan-deed'
import { wasToLeave } from '#pitch/was-to-leave'
import type { PlannedTurn, PracticePlan } from '#planning/practice-plan'
import { aPhone, aPlan, aPlannedTurn } from '../support/pitch-builder'
import { seededRandom } from '../support/seeded-random'

const letters = 'abcdefgh'
const roster = [...letters, 'z'].map((id) => ({ id, name: id.toUpperCase() }))
const known = roster.map(({ id, name }) => ({ id, name, keeps: true, isMember: true }))

/** Eight players, two rounds of four balls, three against two: three wait at every ball. */
function planOfEight(change: (plan: PracticePlan) => PracticePlan = (plan) => plan): PracticePlan {
  const order = [...letters]
  const turns = Array.from({ length: 8 }, (_, turn): PlannedTurn => {
    const at = (place: number) => order[(turn * 3 + place) % order.length]
    return aPlannedTurn(turn < 4 ? 0 : 1, `${at(0)}${at(1)}${at(2)}/${at(3)}${at(4)}`)
  })
  const shape = { attack: 3, defend: 2, keep: 0 }
  const round = { turnCount: 4, turnSeconds: 60, gapSeconds: 15, stations: [shape] }
  return change(aPlan(turns, { rounds: ['First', 'Second'].map((title) => ({ title, ...round })) }))
}

function anew(
  plan: PracticePlan,
  state: PitchState,
  called = 0,
  chosen?: Parameters<typeof planAnew>[0]['chosen'],
) {
  return planAnew({ state: { ...state, plan }, known, called, chosen, tries: 4_000 })
}

function turnsOf(made: Anew): readonly PlannedTurn[] {
  const { outcome, request, fromTurn } = made
  const found = outcome.kind === 'planned' ? outcome : outcome.smaller
  if (!found) throw new Error('no plan')
  return replanDeed(request, found, { fromTurn, sentence: '' }).turns
}

const seated = (turn: PlannedTurn | undefined) =>
  placedIn(turn?.stations ?? []).map(({ playerId }) => playerId)

describe('a new rotation', () => {
  it('before the beginning is for those who are here, and gives everyone a place', () => {
    const plan = planOfEight()
    const tapped = aPhone()
    tapped.here('abcdef')
    const made = anew(plan, foldPitch(plan, roster, tapped.events))
    const turns = turnsOf(made)
    expect(made.fromTurn).toBe(0)
    expect(turns).toHaveLength(8)
    for (const turn of turns) expect(seated(turn)).toHaveLength(5)
    expect([...new Set(turns.flatMap(seated))].sort()).toEqual([...'abcdef'])
  })

  it('leaves the round that is called alone, but for the place of whoever left', () => {
    const plan = planOfEight()
    const tapped = aPhone()
    tapped.here(letters)
    tapped.begin()
    tapped.state('a', 'gone', 20)
    const state = foldPitch(plan, roster, tapped.events)
    const made = anew(plan, state, 4)
    expect(made).toMatchObject({ fromTurn: 0, firstFree: 4 })
    const turns = turnsOf(made)
    plan.turns.slice(0, 4).forEach((before, turn) => {
      const kept = placedIn(before.stations).filter(({ playerId }) => playerId !== 'a')
      expect(placedIn(turns[turn]?.stations ?? [])).toEqual(expect.arrayContaining(kept))
    })
    expect(turns.flatMap(seated)).not.toContain('a')
  })

  it('gives who comes late nothing in a called turn, and a place after it', () => {
    const plan = planOfEight()
    const tapped = aPhone()
    tapped.here('abcdefg')
    const first = foldPitch(plan, roster, tapped.events)
    tapped.tap(-30, { kind: 'replan', fromTurn: 0, turns: turnsOf(anew(plan, first)), sentence: '' })
    tapped.begin()
    tapped.state('h', 'here', 30)
    const turns = turnsOf(anew(plan, foldPitch(plan, roster, tapped.events), 4))
    expect(turns.slice(0, 4).flatMap(seated)).not.toContain('h')
    expect(turns.slice(4).flatMap(seated)).toContain('h')
  })

  it('takes in a new face, which owes and is owed nothing', () => {
    const plan = planOfEight()
    const tapped = aPhone()
    tapped.here(letters)
    tapped.tap(-10, { kind: 'guest', playerId: 'g1', name: 'Quill' })
    const made = anew(plan, foldPitch(plan, roster, tapped.events))
    expect(made.request.players.at(-1)).toMatchObject({
      playerId: 'g1',
      keeps: false,
      gap: { attack: 0, rest: 0 },
    })
    expect(turnsOf(made).flatMap(seated)).toContain('g1')
  })

  it('has everybody who is here in the free game, where everybody was to play it', () => {
    const turns = [
      aPlannedTurn(0, 'abc/de'),
      aPlannedTurn(0, 'fgh/ab'),
      aPlannedTurn(1, 'abcd/efgh'),
      aPlannedTurn(1, 'efgh/abcd'),
    ]
    const drawn = (attack: number) => [{ attack, defend: attack, keep: 0 }]
    const rounds = (attack: number) =>
      [
        { title: 'Turns', stations: [{ attack: 3, defend: 2, keep: 0 }] },
        { title: 'Free game', stations: drawn(attack), isFreeGame: true },
      ].map((round) => ({ turnCount: 2, turnSeconds: 60, gapSeconds: 15, ...round }))
    const plan = aPlan(turns, { rounds: rounds(4) })
    const tapped = aPhone()
    tapped.here('abcdefg')
    const made = turnsOf(anew(plan, foldPitch(plan, roster, tapped.events)))
    expect(made.map((turn) => seated(turn).length)).toEqual([5, 5, 7, 7])
    const asDrawn = { ...plan, design: { ...plan.design, rounds: rounds(3) } }
    const kept = turnsOf(anew(asDrawn, foldPitch(asDrawn, roster, tapped.events)))
    expect(kept.map((turn) => seated(turn).length)).toEqual([5, 5, 6, 6])
  })

  it('keeps a place for who is to come later and has not come yet, and none for who was to leave', () => {
    const plan = planOfEight((own) => ({
      ...own,
      players: own.players.map((player) => ({
        ...player,
        present: player.playerId === 'h' ? [[5, 8]] : player.playerId === 'g' ? [[1, 4]] : player.present,
      })),
    }))
    const tapped = aPhone()
    tapped.here('abcdefg')
    const turns = turnsOf(anew(plan, foldPitch(plan, roster, tapped.events)))
    expect(turns.slice(0, 4).flatMap(seated)).not.toContain('h')
    expect(turns.slice(4).flatMap(seated)).toContain('h')
    expect(turns.slice(4).flatMap(seated)).not.toContain('g')
  })

  it('counts on who was to leave by now and is still here, once it is asked for', () => {
    const plan = planOfEight((own) => ({
      ...own,
      players: own.players.map((player) => ({
        ...player,
        present: player.playerId === 'g' ? [[1, 4]] : player.present,
      })),
    }))
    const tapped = aPhone()
    tapped.here(letters)
    const first = foldPitch(plan, roster, tapped.events)
    tapped.tap(-30, { kind: 'replan', fromTurn: 0, turns: turnsOf(anew(plan, first)), sentence: '' })
    tapped.begin()
    const now = () => foldPitch(plan, roster, tapped.events)
    expect(wasToLeave(now())).toEqual([])
    tapped.done(300, 0, now().turns.slice(0, 4))
    expect(wasToLeave(now())).toEqual(['g'])
    expect(needsPlanAnew(now())).toBe(false)
    const turns = turnsOf(anew(plan, now()))
    expect(turns.flatMap(seated)).toContain('g')
    tapped.state('g', 'gone', 310)
    expect(wasToLeave(now())).toEqual([])
  })

  it('is smaller where too few are left, in the shape that is chosen', () => {
    const plan = planOfEight()
    const tapped = aPhone()
    tapped.here('abcd')
    const state = foldPitch(plan, roster, tapped.events)
    const { outcome } = anew(plan, state)
    expect(outcome.kind).toBe('tooFew')
    const shapes = outcome.kind === 'tooFew' ? (outcome.shrink[0]?.proposals ?? []) : []
    expect(shapes.length).toBeGreaterThan(1)
    for (const turn of turnsOf(anew(plan, state))) expect(seated(turn).length).toBeLessThanOrEqual(4)
    for (const { stations } of shapes) {
      const chosen = anew(plan, state, 0, new Map([0, 1].map((round) => [round, stations])))
      expect(chosen.outcome.kind).toBe('planned')
      expect(
        turnsOf(chosen)[0]?.stations.map(({ attack, defend }) => [attack.length, defend.length]),
      ).toEqual(stations.map(({ attack, defend }) => [attack, defend]))
    }
  })

  it('never places who is not here, whoever comes and goes when, and fits every time', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = seededRandom(seed)
      const plan = planOfEight()
      const tapped = aPhone()
      tapped.here(letters)
      tapped.begin()
      const played = random.whole(0, 3)
      if (random.chance(0.5) && played > 0) {
        const start = tapped.start(30, 0, 'abc/de')
        if (random.chance(0.5)) tapped.end(80, start)
      } else if (played > 0) tapped.done(played * 100, 0, plan.turns.slice(0, played))
      for (const id of random.shuffle([...letters]).slice(0, random.whole(1, 3)))
        tapped.state(id, random.chance(0.3) ? 'out' : random.chance(0.5) ? 'gone' : 'notPlaying', 400)
      const state = foldPitch(plan, roster, tapped.events)
      const made = anew(plan, state, random.whole(0, 4))
      const here = new Set(state.players.filter((one) => one.state === 'here').map((one) => one.playerId))
      for (const turn of turnsOf(made)) for (const id of seated(turn)) expect(here).toContain(id)
      tapped.tap(401, { kind: 'replan', fromTurn: made.fromTurn, turns: turnsOf(made), sentence: '' })
      const after = foldPitch(plan, roster, tapped.events)
      expect(after.next?.missing ?? []).toEqual([])
      expect(after.played).toEqual(state.played)
    }
  })
})

describe('a plan no longer fits', () => {
  const isUnfit = (make: (tapped: ReturnType<typeof aPhone>) => void) => {
    const plan = planOfEight()
    const tapped = aPhone()
    make(tapped)
    return needsPlanAnew(foldPitch(plan, roster, tapped.events))
  }
  it('when somebody with a place is missing, left, or does not play', () => {
    expect(isUnfit((tapped) => tapped.here(letters))).toBe(false)
    expect(isUnfit((tapped) => tapped.here('abcdefg'))).toBe(true)
    for (const state of ['gone', 'out', 'notPlaying'] as const)
      expect(
        isUnfit((tapped) => {
          tapped.here(letters)
          tapped.state('b', state, 10)
        }),
      ).toBe(true)
  })
  it('when somebody who is here has no place to come', () => {
    expect(isUnfit((tapped) => tapped.here(`${letters}z`))).toBe(true)
  })
  it('but not before anybody is tapped, and not when it is over', () => {
    expect(isUnfit(() => undefined)).toBe(false)
    expect(
      isUnfit((tapped) => {
        tapped.here('abc')
        tapped.begin()
        tapped.stop(60)
      }),
    ).toBe(false)
  })
})
