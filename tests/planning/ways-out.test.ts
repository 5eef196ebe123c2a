import { describe, expect, it } from 'vitest'
import type { PlanRequest } from '#planning/practice-plan'
import { problemOfRequest } from '#planning/problem-of-request'
import { quickPlan } from '#planning/quick-plan'
import { sayPlanClash } from '#planning/say-plan-clash'
import { waysOut } from '#planning/ways-out'
import { findClash } from '#rotation/clash'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'

const nameOf = (id: string) => id.toUpperCase()
const whyNot = (request: PlanRequest) => {
  const problem = problemOfRequest(request)
  return findClash(problem).map((part) => sayPlanClash(problem, { part, nameOf }))
}

describe('ways out of a request without a plan', () => {
  it('each have one, and the nearest comes first; six requests with too few children', () => {
    for (let seed = 0; seed < 6; seed += 1) {
      const own = randomPlanRequest(seed)
      const request = { ...own, players: own.players.slice(0, 5) }
      const ways = waysOut(request, nameOf)
      expect(ways.length).toBeGreaterThan(0)
      for (const way of ways) expect(quickPlan(way.request).ok).toBe(true)
    }
  })

  it('smaller areas where one side has too few for its places, and only then that sides are changed', () => {
    const own = Object.fromEntries(
      Array.from({ length: 11 }, (_, index) => [index + 1, { side: index < 6 ? 0 : 1 } as const]),
    )
    const twice = (attack: number, defend: number) =>
      Array.from({ length: 2 }, () => ({ attack, defend, keep: 0 }))
    const rounds = [aPlanRound({ stations: twice(3, 2) }), aPlanRound({ stations: twice(3, 3) })]
    const plain = aPlanRequest({ players: 11, rounds, own })
    const request: PlanRequest = {
      ...plain,
      design: { ...plain.design, sides: { names: ['White', 'Orange'], swap: 'never' } },
      rules: { ...plain.rules, keepsSides: true },
    }
    const [first, ...others] = waysOut(request, nameOf)
    expect(first?.sentences).toEqual([
      'Round 2, Two against one: Area 2: 2 against 2 instead of 3 against 3. One waits.',
    ])
    expect(first?.request.rules.keepsSides).toBe(true)
    for (const way of others) expect(quickPlan(way.request).ok).toBe(true)
    // Ten places for eleven, but six of them for five in orange.
    const three = [aPlanRound({ stations: twice(2, 3) })]
    const narrow = { ...request, design: { ...request.design, rounds: three } }
    const ways = waysOut(narrow, nameOf)
    expect(ways[0]?.request.rules.keepsSides).toBe(true)
    expect(ways.at(-1)?.sentences).toEqual(['Players may change sides in this practice.'])
  })

  it('smaller areas where too few are expected, said round by round', () => {
    const request = aPlanRequest({ players: 6, rounds: [aPlanRound(), aFreeGame] })
    expect(whyNot(request)[0]).toBe('Turn 1 has seven places, and six are expected for it.')
    const [first] = waysOut(request, nameOf)
    expect(first?.sentences).toHaveLength(2)
    expect(first?.sentences[0]).toMatch(/^Round 1, Two against one: /)
    expect(first?.request.players).toHaveLength(6)
  })

  it('a goalkeeper who was spared, where too few may be in goal', () => {
    const own = Object.fromEntries(Array.from({ length: 9 }, (_, at) => [at + 1, { keeps: false }]))
    const request = aPlanRequest({ rounds: [aPlanRound()], own: { ...own, 4: { notInGoal: true } } })
    expect(whyNot(request)[0]).toBe('Turn 1 needs one in goal, and of those expected none may be.')
    expect(waysOut(request, nameOf)[0]?.sentences).toEqual(['Let P4 be in goal after all.'])
  })

  it('a place let go that cannot be held', () => {
    const request = aPlanRequest({
      rounds: [aPlanRound()],
      own: { 1: { keeps: false } },
      locks: [{ turn: 2, playerId: 'p1', place: { station: 1, role: 'keep' } }],
    })
    expect(whyNot(request)).toEqual([
      'P1 is held fast as in goal in area 1 in turn 2, and is not to be in goal.',
    ])
    const [way] = waysOut(request, nameOf)
    expect(way?.sentences).toEqual(['Let go of the place of P1 in turn 2.'])
    expect(way?.request.locks).toEqual([])
  })

  it('a pair that need not be apart, or sides that may be left, one at a time', () => {
    const round = aPlanRound({ stations: [{ attack: 2, defend: 1, keep: 0 }] })
    const apart = aPlanRequest({ players: 3, rounds: [round], apart: [['p1', 'p2']] })
    expect(waysOut(apart, nameOf).map(({ sentences }) => sentences)).toContainEqual([
      'Do not keep P1 and P2 apart in this practice.',
    ])
    const sided = aPlanRequest({
      players: 3,
      rounds: [round],
      own: { 1: { side: 0 }, 2: { side: 1 }, 3: { side: 1 } },
      rules: { restLimit: null, isGentle: false, keepsSides: true },
    })
    const withSides = {
      ...sided,
      design: { ...sided.design, sides: { names: ['Red', 'Blue'] as const, swap: 'never' as const } },
    }
    expect(waysOut(withSides, nameOf).map(({ sentences }) => sentences)).toContainEqual([
      'Players may change sides in this practice.',
    ])
  })

  it('a limit of one child lifted, where it leaves places empty', () => {
    const request = aPlanRequest({ players: 7, rounds: [aPlanRound()], own: { 2: { mostTurns: 1 } } })
    const quick = quickPlan(request)
    if (quick.ok) throw new Error('a plan for seven with one who has one turn')
    const ways = waysOut(request, nameOf, quick.reasons)
    expect(ways.map(({ sentences }) => sentences)).toContainEqual([
      'Let P2 have more turns in this practice.',
    ])
  })
})
