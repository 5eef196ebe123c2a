import { describe, expect, it } from 'vitest'
import { planFaults } from '#planning/plan-faults'
import { proofOfPlan } from '#planning/plan-proof'
import { plannedTurns, timetableOf } from '#planning/planned-turns'
import type { PlanRequest, PracticePlan } from '#planning/practice-plan'
import { quickPlan } from '#planning/quick-plan'
import { turnFrames } from '#planning/turn-frames'
import { resting, seatPlace } from '#rotation/place'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'

function planned(request: PlanRequest): PracticePlan | null {
  const quick = quickPlan(request)
  if (!quick.ok) return null
  const { problem, plan, restLimitUsed } = quick.value
  return {
    ...request,
    turns: plannedTurns(request, plan),
    proof: proofOfPlan(problem, { plan, bound: 0, restLimitUsed }),
  }
}

const requests = Array.from({ length: 30 }, (_, seed) => randomPlanRequest(seed))

describe('a plan made at once', () => {
  it('has no fault, for 30 requests drawn at random', () => {
    const plans = requests.map(planned)
    expect(plans.filter((plan) => plan !== null).length).toBeGreaterThan(25)
    expect(plans.flatMap((plan) => (plan ? planFaults(plan) : []))).toEqual([])
  })

  it('is the same for the same request', () => {
    const request = randomPlanRequest(7)
    expect(quickPlan(request)).toEqual(quickPlan(structuredClone(request)))
  })

  it('keeps a lock, and the lock of a free game in both of its halves', () => {
    const request = aPlanRequest({
      locks: [
        { turn: 2, playerId: 'p3', place: { station: 2, role: 'defend' } },
        { turn: 6, playerId: 'p4', place: { station: 1, role: 'attack' } },
      ],
    })
    const plan = planned(request)
    expect(plan?.turns[1]?.stations[1]?.defend).toEqual(['p3'])
    expect(plan?.turns[5]?.stations[0]?.attack).toContain('p4')
    expect(plan?.turns[4]?.stations[0]?.defend).toContain('p4')
  })

  it('gives whoever is at most to have two turns at most two', () => {
    const plan = planned(aPlanRequest({ players: 12, own: { 1: { mostTurns: 2 } } }))
    const turns = plan?.turns.filter(({ stations }) =>
      stations.some(({ attack, defend, keep }) => [...attack, ...defend, ...keep].includes('p1')),
    )
    expect(turns?.length).toBeLessThanOrEqual(2)
    expect(plan && planFaults(plan)).toEqual([])
  })

  it('lets whoever waits after each turn wait between the halves of a free game', () => {
    const plan = planned(aPlanRequest({ players: 12, own: { 1: { waitsAfterEachTurn: true } } }))
    expect(plan && planFaults(plan)).toEqual([])
  })

  it('says what clashes when there is none', () => {
    const quick = quickPlan(aPlanRequest({ players: 6 }))
    expect(quick).toMatchObject({
      ok: false,
      reasons: [{ rule: 'seats', turn: 0, asked: 7, there: 6 }, {}, {}, {}, {}, {}],
    })
  })
})

describe('turns of a plan', () => {
  it('read back, are the timetable they were made from', () => {
    for (const request of requests) {
      const quick = quickPlan(request)
      if (!quick.ok) continue
      const back = timetableOf({ ...request, turns: plannedTurns(request, quick.value.plan) })
      expect(back).toEqual({ ok: true, value: quick.value.plan })
    }
  })

  it('of a free game swap the sides, however many they are', () => {
    const uneven = { ...aFreeGame, stations: [{ attack: 4, defend: 2, keep: 1 }] }
    const frames = turnFrames([aPlanRound({ turnCount: 1 }), uneven])
    expect(frames.map(({ half, stations }) => [half, stations[0]])).toEqual([
      [null, { attack: 2, defend: 1, keep: 1 }],
      [0, { attack: 4, defend: 2, keep: 1 }],
      [1, { attack: 2, defend: 4, keep: 1 }],
    ])
    const plan = planned(aPlanRequest({ players: 9, rounds: [uneven] }))
    const [first, second] = plan?.turns ?? []
    expect(second?.stations[0]?.attack).toEqual(first?.stations[0]?.defend)
    expect(second?.stations[0]?.defend).toEqual(first?.stations[0]?.attack)
    expect(second?.stations[0]?.keep).toEqual(first?.stations[0]?.keep)
  })
})

describe('what is wrong with a plan', () => {
  const plan = () => structuredClone(planned(aPlanRequest())) as PracticePlan
  const withTurn = (
    turn: number,
    change: (stations: PracticePlan['turns'][number]['stations']) => unknown,
  ) => {
    const own = plan()
    return {
      ...own,
      turns: own.turns.map((one, at) => (at === turn ? { ...one, stations: change(one.stations) } : one)),
    } as PracticePlan
  }

  it('somebody with two places, somebody unknown, a place left empty', () => {
    const twice = withTurn(0, ([first, second]) => [
      { ...first, attack: [...(first?.keep ?? []), first?.attack[0]] },
      second,
    ])
    expect(planFaults(twice)[0]).toMatchObject({ what: 'seat', why: 'twoPlaces', turn: 0 })
    const stranger = withTurn(0, ([first, second]) => [{ ...first, keep: ['nobody'] }, second])
    expect(planFaults(stranger)).toEqual([
      { what: 'seat', why: 'unknownPlayer', turn: 0, playerId: 'nobody' },
    ])
    const empty = withTurn(0, ([first, second]) => [{ ...first, keep: [] }, second])
    expect(planFaults(empty)).toContainEqual({ what: 'rule', rule: 'seats', turn: 0, playerIds: [] })
  })

  it('halves of a free game that do not mirror each other', () => {
    const own = withTurn(5, ([station]) => [{ ...station, attack: station?.defend, defend: station?.attack }])
    expect(planFaults(own)).toContainEqual({ what: 'halves', turn: 5 })
  })

  it('turns that are not those of the rounds, the list with somebody twice', () => {
    const shorter = plan()
    expect(planFaults({ ...shorter, turns: shorter.turns.slice(1) })).toContainEqual({
      what: 'otherTurns',
      turn: 5,
    })
    const [first] = shorter.players
    const doubled = { ...shorter, players: [...shorter.players, first as never] }
    expect(planFaults(doubled)).toEqual([{ what: 'playerTwice', playerId: 'p1' }])
    expect(planFaults({ ...shorter, apart: [['p2', 'p2']] })).toEqual([{ what: 'pairOfOne', playerId: 'p2' }])
  })

  it('a longer wait than the plan admits to', () => {
    const request = aPlanRequest({ players: 14, rounds: [aPlanRound({ turnCount: 6 })] })
    const own = planned(request) as PracticePlan
    const timetable = timetableOf(own)
    const places = timetable.ok ? timetable.value[0] : []
    // The first turn six times over: whoever waits in it waits for good.
    const rigid = {
      ...own,
      turns: plannedTurns(
        request,
        Array.from({ length: 6 }, () => places ?? []),
      ),
    }
    expect(places?.filter((place) => place === resting).length).toBe(7)
    expect(places).toContain(seatPlace(0, 'keep'))
    expect(planFaults(rigid).map((fault) => 'rule' in fault && fault.rule)).toContain('restLimit')
    expect(planFaults({ ...rigid, proof: { ...rigid.proof, restLimitUsed: 6 } })).toEqual([])
  })
})
