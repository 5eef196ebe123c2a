import { describe, expect, it } from 'vitest'
import { sayClosed } from '#planning/closes-today'
import { planBalance } from '#planning/plan-balance'
import { draftOf, planOfDraft, withLock, withoutLock, withSolved, withSwap } from '#planning/plan-draft'
import { longestWaits, mixingOf } from '#planning/plan-measures'
import { proofOfPlan, sayProof } from '#planning/plan-proof'
import { pricedRules, priceOfRule } from '#planning/price-tags'
import { provenWithin } from '#planning/proven-within'
import { isSamePlan } from '#planning/same-plan'
import { shortNames } from '#planning/short-names'
import { splitSides } from '#planning/split-sides'
import { turnFrames } from '#planning/turn-frames'
import { noSeconds } from '#rotation/fair-seconds'
import { resting, seatPlace } from '#rotation/place'
import { planValues } from '#rotation/plan-values'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'

describe('what is said of a plan', () => {
  it('that nothing fairer is possible only where value and bound meet', () => {
    const say = (value: number, bound: number, within = { heldFast: false, freeGame: false }) =>
      sayProof({ value, bound, proven: value === bound, players: 11, within })
    expect(say(100, 100)).toBe('As fair as eleven allow: nothing fairer is possible.')
    expect(say(101, 100)).toBe('Within 1 % of the best possible.')
    expect(say(102, 100)).toBe('Within 2 % of the best possible.')
    expect(say(121, 100)).toMatch(/is not known\.$/)
    expect(say(100, 0)).toMatch(/is not known\.$/)
    expect(say(100, 100, { heldFast: true, freeGame: false })).toBe(
      'As fair as eleven allow around what is held fast: nothing fairer is possible.',
    )
    expect(say(102, 100, { heldFast: false, freeGame: true })).toBe(
      'Within 2 % of the best possible with this free game.',
    )
  })

  it('what it takes as given: places held fast, and a free game in which somebody waits or is in goal', () => {
    const withinOf = (request: Parameters<typeof draftOf>[0]) => {
      const problem = draftOf(request).made?.problem
      if (!problem) throw new Error('no plan')
      return provenWithin(problem)
    }
    const even = { ...aFreeGame, stations: [{ attack: 5, defend: 5, keep: 0 }] }
    const rounds = [aPlanRound(), even]
    expect(withinOf(aPlanRequest({ players: 10, rounds }))).toEqual({ heldFast: false, freeGame: false })
    expect(withinOf(aPlanRequest({ players: 11, rounds }))).toEqual({ heldFast: false, freeGame: true })
    expect(withinOf(aPlanRequest({ players: 10 }))).toEqual({ heldFast: false, freeGame: true })
    const locks = [{ turn: 1, playerId: 'p1', place: 'rest' }] as const
    expect(withinOf(aPlanRequest({ players: 10, rounds, locks }))).toEqual({
      heldFast: true,
      freeGame: false,
    })
  })

  it('what part of the differences it closes', () => {
    const request = aPlanRequest({
      players: 4,
      rounds: [aPlanRound({ turnCount: 2, stations: [{ attack: 1, defend: 1, keep: 0 }] })],
      own: { 1: { gap: { ...noSeconds, attack: -120 } }, 2: { gap: { ...noSeconds, attack: 120 } } },
    })
    const { made } = draftOf(request)
    const attack = seatPlace(0, 'attack')
    const defend = seatPlace(0, 'defend')
    // 2 × 40 s: a quarter of them, 20 s, is everyone's even share. P1 attacks in both: 60 s of 120 are closed, P2 20 s.
    const plan = [
      [attack, resting, defend, resting],
      [attack, resting, resting, defend],
    ]
    const balances = planBalance(made?.problem as never, { plan, request })
    expect(balances[0]?.roles.attack).toMatchObject({
      before: -120,
      after: -60,
      turns: 2,
      seconds: 80,
      dueSeconds: 20,
    })
    expect(sayClosed(balances, true)).toEqual([
      'Closes a third of the differences in attacking today; the rest carries over, gently.',
    ])
    const with240 = (seconds: number) => {
      const figure = { before: -240, after: 0, seconds, dueSeconds: 20, turns: 1, dueTurns: 1 }
      const none = { ...figure, before: 0 }
      const roles = { attack: figure, defend: none, keep: none, rest: none }
      return sayClosed([{ playerId: 'p1', roles }], true)
    }
    expect(with240(20)).toEqual(['Closes none of the differences in attacking today; they carry over.'])
    expect(with240(260)).toEqual(['Closes all of the differences in attacking today.'])
  })

  it('the longest wait by the clock, gaps between balls included, a free game as one', () => {
    const rounds = [aPlanRound({ turnCount: 3, stations: [{ attack: 1, defend: 0, keep: 0 }] }), aFreeGame]
    const turns = turnFrames(rounds)
    const on = seatPlace(0, 'attack')
    const plan = [
      [on, resting],
      [resting, on],
      [resting, resting],
      [on, resting],
      [on, resting],
    ]
    // First: 20 s after turn 1, two turns of 40 s with 20 s after each. Second: turn 3, both halves, and 20 s after turns 2 and 3.
    expect(longestWaits(plan, { rounds, turns })).toEqual([
      { turns: 2, seconds: 20 + 40 + 20 + 40 + 20 },
      { turns: 2, seconds: 20 + 40 + 20 + 300 + 300 },
    ])
  })

  it('who played side by side', () => {
    const [attack, other] = [seatPlace(0, 'attack'), seatPlace(1, 'attack')]
    expect(
      mixingOf([
        [attack, attack, other],
        [attack, attack, resting],
        [attack, other, other],
      ]),
    ).toEqual({
      pairs: 3,
      pairsMet: 2,
      most: 2,
    })
  })

  it('first names, and a letter more where two are the same', () => {
    const names = shortNames([
      { id: '1', name: 'Ana Marlwick' },
      { id: '2', name: 'Ana Moss' },
      { id: '3', name: 'Bo Quill' },
      { id: '4', name: 'Cy' },
    ])
    expect([...names.values()]).toEqual(['Ana Ma.', 'Ana Mo.', 'Bo', 'Cy'])
  })
})

describe('a plan in the making', () => {
  it('held fast and searched anew, keeps the place; what is said of it is never better than known', () => {
    for (let seed = 0; seed < 20; seed += 1) {
      const draft = draftOf(randomPlanRequest(seed))
      if (!draft.made) continue
      const { plan } = draft.made
      const player = plan[0]?.findIndex((place) => place > resting) ?? 0
      const locked = withLock(draft, { turn: 0, player })
      expect(locked.made?.plan).toBe(plan)
      const again = draftOf(locked.request)
      expect(again.made?.plan[0]?.[player]).toBe(plan[0]?.[player])
      // Without the lock other plans are possible: the bound found with it must go.
      const bound = planValues(locked.made?.problem as never, plan).unfairness
      const proven = withSolved(locked, {
        problem: locked.made?.problem as never,
        best: { plan, restLimitUsed: locked.made?.restLimitUsed ?? null, value: bound, bound },
        isEnd: true,
      })
      expect(proven.made && proofOfPlan(proven.made.problem, proven.made).proven).toBe(true)
      expect(withoutLock(proven, { turn: 0, player }).made?.bound).toBe(0)
    }
  })

  it('takes a better plan and a better bound, and nothing found for another problem', () => {
    const draft = draftOf(aPlanRequest())
    const { made } = draft
    if (!made) throw new Error('no plan')
    const swapped = withSwap(draft, { turn: 0, one: 0, other: 1 })
    const worse = { plan: made.plan, restLimitUsed: made.restLimitUsed, value: 0, bound: 7 }
    expect(withSolved(draft, { problem: made.problem, best: worse, isEnd: true }).made).toMatchObject({
      plan: made.plan,
      bound: 7,
      isSettled: true,
    })
    const other = structuredClone(made.problem)
    expect(withSolved(swapped, { problem: other, best: worse, isEnd: true })).toBe(swapped)
  })

  it('is the same as the plan that was saved of it, whatever order a database gave its keys', () => {
    const plan = planOfDraft(draftOf(aPlanRequest()))
    if (!plan) throw new Error('no plan')
    const { turns, design, ...rest } = plan
    const { rounds, ...others } = design
    const saved = { turns, ...rest, design: { rounds, ...others } }
    expect(isSamePlan(plan, saved)).toBe(true)
    expect(isSamePlan(plan, { ...saved, locks: [{ turn: 1, playerId: 'p1', place: 'rest' }] })).toBe(false)
    expect(isSamePlan({ ...plan, proof: { ...plan.proof, bound: 1 } }, saved)).toBe(false)
  })
})

describe('prices and sides', () => {
  it('a rule costs what the best without it is fairer by, or at most that', () => {
    expect(priceOfRule({ value: 110, bound: 110 }, { value: 100, bound: 100 })).toEqual({
      kind: 'costs',
      share: 1.1 - 1,
    })
    expect(priceOfRule({ value: 110, bound: 90 }, { value: 105, bound: 100 })).toEqual({
      kind: 'atMost',
      share: 1.1 - 1,
    })
    expect(priceOfRule({ value: 100, bound: 100 }, { value: 100, bound: 100 })).toEqual({ kind: 'free' })
    expect(priceOfRule({ value: 100, bound: 0 }, { value: 100, bound: 0 })).toEqual({ kind: 'unknown' })
  })

  it('every rule that is set has a tag, and none that is not', () => {
    const tags = (request: Parameters<typeof pricedRules>[0]) =>
      pricedRules(request, String).map(({ words }) => words)
    expect(
      tags(
        aPlanRequest({
          rules: { restLimit: null, isGentle: false, keepsSides: false },
          rounds: [aPlanRound()],
        }),
      ),
    ).toEqual([])
    expect(
      tags(
        aPlanRequest({
          rounds: [aPlanRound({ keepersStay: true })],
          apart: [
            ['p1', 'p2'],
            ['p1', 'gone'],
          ],
          own: { 3: { mostTurns: 2 } },
          locks: [{ turn: 1, playerId: 'p4', place: 'rest' }],
        }),
      ),
    ).toEqual([
      'Nobody waits more than 2 turns in a row',
      'One goalkeeper all through round 1',
      'p1 and p2 kept apart',
      'Fewer turns for p3 today',
      'p4 held fast in turn 1',
    ])
  })

  it('two sides are even in number and in goalkeepers, pairs where they should be', () => {
    for (const count of [6, 7, 11, 14]) {
      const { players } = aPlanRequest({ players: count, own: { 1: { keeps: false }, 2: { keeps: false } } })
      const input = { players, apart: [['p1', 'p2'] as const], together: [['p3', 'p4'] as const] }
      const sides = splitSides(input)
      const of = (side: number) => [...sides].filter(([, own]) => own === side).length
      expect(Math.abs(of(0) - of(1))).toBeLessThanOrEqual(1)
      expect(sides.get('p1')).not.toBe(sides.get('p2'))
      expect(sides.get('p3')).toBe(sides.get('p4'))
      expect(splitSides(input)).toEqual(sides)
    }
  })
})
