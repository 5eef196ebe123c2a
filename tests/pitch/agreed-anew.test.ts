import { describe, expect, it } from 'vitest'
import { planForHelper } from '#pitch/for-helper'
import { foldPitch } from '#pitch/pitch-state'
import { type Anew, planAnew } from '#pitch/plan-anew'
import { replanDeed } from '#pitch/replan-deed'
import { withShownPlaces } from '#planning/agreed-places'
import type { AgreedToday, PlannedTurn, PracticePlan } from '#planning/practice-plan'
import { aPhone, aPlan, aPlannedTurn } from '../support/pitch-builder'

const letters = 'abcdefgh'
const roster = [...letters].map((id) => ({ id, name: id.toUpperCase() }))
const known = roster.map(({ id, name }) => ({ id, name, keeps: true, isMember: true }))

/** Eight players, two rounds of four balls, three against two: three wait at every ball. */
function planOfEight(agreed: Readonly<Record<string, AgreedToday>>): PracticePlan {
  const order = [...letters]
  const turns = Array.from({ length: 8 }, (_, turn): PlannedTurn => {
    const at = (place: number) => order[(turn * 3 + place) % order.length]
    return aPlannedTurn(turn < 4 ? 0 : 1, `${at(0)}${at(1)}${at(2)}/${at(3)}${at(4)}`)
  })
  const round = {
    turnCount: 4,
    turnSeconds: 60,
    gapSeconds: 15,
    stations: [{ attack: 3, defend: 2, keep: 0 }],
  }
  const plan = aPlan(turns, { rounds: ['First', 'Second'].map((title) => ({ title, ...round })) })
  const players = plan.players.map((player) =>
    agreed[player.playerId] ? { ...player, agreed: agreed[player.playerId] } : player,
  )
  return withShownPlaces({ ...plan, players })
}

/** Only these came. */
function anewWith(plan: PracticePlan, here: string): Anew {
  const tapped = aPhone()
  tapped.here(here)
  const state = foldPitch(plan, roster, tapped.events)
  return planAnew({ state: { ...state, plan }, known, called: 0, tries: 4_000 })
}

function turnsOf({ outcome, request, fromTurn }: Anew): readonly PlannedTurn[] {
  const found = outcome.kind === 'planned' ? outcome : outcome.smaller
  if (!found) throw new Error('no plan')
  return replanDeed(request, found, { fromTurn, sentence: '' }).turns
}

const placeOf = ({ stations }: PlannedTurn, id: string) =>
  stations[0]?.attack.includes(id) ? 'A' : stations[0]?.defend.includes(id) ? 'D' : 'W'

describe('a new rotation at the pitch', () => {
  it('keeps the places of somebody who was shown the plan early', () => {
    const plan = planOfEight({ c: { planShownEarly: true } })
    const made = anewWith(plan, 'abcdef')
    expect(turnsOf(made).map((turn) => placeOf(turn, 'c'))).toEqual(
      plan.turns.map((turn) => placeOf(turn, 'c')),
    )
    expect(made.notKept).toEqual([])
  })

  it('never has somebody wait alone who is not to, and lets nobody’s fewer turns go', () => {
    const made = anewWith(planOfEight({ c: { neverWaitsAlone: true }, d: { dueShare: 0.5 } }), 'abcdef')
    const turns = turnsOf(made)
    expect(turns.map((turn) => placeOf(turn, 'c'))).not.toContain('W')
    const playing = (id: string) => turns.filter((turn) => placeOf(turn, id) !== 'W').length
    const others = ['a', 'b', 'e', 'f'].map(playing)
    expect(playing('d')).toBeLessThan(Math.min(...others))
  })

  it('keeps one side for who agreed to it', () => {
    const plan = planOfEight({ c: { sameSide: true } })
    const players = plan.players.map((own) => (own.playerId === 'c' ? { ...own, side: 1 as const } : own))
    const turns = turnsOf(anewWith({ ...plan, players }, 'abcdef'))
    expect(turns.map((turn) => placeOf(turn, 'c'))).not.toContain('A')
  })

  it('says with whom it cannot be kept, rather than make areas smaller for all', () => {
    const everyone = Object.fromEntries([...letters].map((id) => [id, { neverWaitsAlone: true }]))
    const made = anewWith(planOfEight(everyone), 'abcdef')
    expect(made.outcome.kind).toBe('planned')
    expect([...made.notKept].sort()).toEqual([...letters])
    for (const { stations } of turnsOf(made)) expect(stations[0]?.attack).toHaveLength(3)
  })
})

describe('a plan on a helper’s phone', () => {
  it('has nothing of what was agreed', () => {
    const plan = planOfEight({
      c: { planShownEarly: true, firstPartner: 'd' },
      d: { dueShare: 0.25, neverWaitsAlone: true },
    })
    const sided = plan.players.map((own) => ({ ...own, side: 1 as const }))
    const told = JSON.stringify(planForHelper({ ...plan, players: sided }))
    expect(told).not.toContain('"side":1')
    for (const word of ['agreed', 'Partner', 'dueShare', 'Alone', 'shown', '0.25'])
      expect(told).not.toContain(word)
  })
})
