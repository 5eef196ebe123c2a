import { describe, expect, it } from 'vitest'
import { problemOfRequest, withFreeGames } from '#planning/problem-of-request'
import { quickPlan } from '#planning/quick-plan'
import { saySwap } from '#planning/say-swap'
import { swapPlaces } from '#planning/swap'
import { checkPlan } from '#rotation/check-plan'
import { away, roleOf } from '#rotation/place'
import { planValues } from '#rotation/plan-values'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'
import { seededRandom } from '../support/seeded-random'

describe('two who change places', () => {
  it('cost what the whole plan, worked out anew, is worth more or less; 150 swaps at random', () => {
    const random = seededRandom(11)
    let tried = 0
    for (let seed = 0; tried < 150 && seed < 100; seed += 1) {
      const request = randomPlanRequest(seed)
      const quick = quickPlan(request)
      if (!quick.ok) continue
      const { plan, problem } = quick.value
      for (let times = 0; times < 10; times += 1) {
        const swap = {
          turn: random.whole(0, plan.length - 1),
          one: random.whole(0, request.players.length - 1),
          other: random.whole(0, request.players.length - 1),
        }
        const swapped = swapPlaces(problem, { plan, request, swap })
        if (!swapped) continue
        tried += 1
        expect(swapped.before).toEqual(planValues(problem, plan))
        expect(swapped.after).toEqual(planValues(problem, swapped.plan))
        // Nobody comes into being or goes: every turn has the same places as before.
        swapped.plan.forEach((places, turn) => {
          expect([...places].sort()).toEqual([...(plan[turn] ?? [])].sort())
        })
        if (swapped.broken.length > 0) continue
        // What is said to break no rule breaks none by the checker, with the free games as they are then.
        const settled = withFreeGames(problemOfRequest(request), { request, plan: swapped.plan })
        expect(checkPlan({ ...settled, restLimit: null }, swapped.plan)).toEqual([])
      }
    }
    expect(tried).toBeGreaterThanOrEqual(150)
  })

  it('hand over the whole duty of a goalkeeper who stays for the round', () => {
    const request = aPlanRequest({ players: 10, rounds: [aPlanRound({ keepersStay: true })] })
    const quick = quickPlan(request)
    if (!quick.ok) throw new Error('no plan')
    const { plan, problem } = quick.value
    const one = plan[0]?.findIndex((place) => place > 0 && roleOf(place) === 'keep') ?? -1
    const other = plan[0]?.indexOf(0) ?? -1
    const swapped = swapPlaces(problem, { plan, request, swap: { turn: 0, one, other } })
    expect(swapped?.turns).toEqual([0, 1, 2, 3])
    expect(swapped?.broken).toEqual([])
    expect(swapped && saySwap(swapped, String).sentences).toContain('Changes turns 1, 2, 3 and 4 together.')
  })

  it('change both halves of a free game', () => {
    const request = aPlanRequest({ players: 9, rounds: [aFreeGame] })
    const quick = quickPlan(request)
    if (!quick.ok) throw new Error('no plan')
    const { plan, problem } = quick.value
    const attacker = plan[1]?.findIndex((place) => place > 0 && roleOf(place) === 'attack') ?? -1
    const waiting = plan[1]?.indexOf(0) ?? -1
    const swapped = swapPlaces(problem, { plan, request, swap: { turn: 1, one: attacker, other: waiting } })
    expect(swapped?.turns).toEqual([0, 1])
    expect(swapped?.plan.map((places) => roleOf(places[waiting] ?? away))).toEqual(['defend', 'attack'])
    expect(swapped?.broken).toEqual([])
  })

  it('are told which rule forbids it, and then may not', () => {
    const request = aPlanRequest({ rounds: [aPlanRound()], own: { 1: { keeps: false } } })
    const quick = quickPlan(request)
    if (!quick.ok) throw new Error('no plan')
    const { plan, problem } = quick.value
    const keeper = plan[0]?.findIndex((place) => place > 0 && roleOf(place) === 'keep') ?? -1
    const swapped = swapPlaces(problem, { plan, request, swap: { turn: 0, one: 0, other: keeper } })
    const said = swapped && saySwap(swapped, (player) => `P${player + 1}`)
    expect(said).toEqual({
      isAllowed: false,
      sentences: ['P1 would be in goal in turn 1, and is not to be.'],
    })
  })
})
