import { describe, expect, it } from 'vitest'
import { agreedDue } from '#fairness/agreed-due'
import { agreedToday, knowsAgreed, withAgreements } from '#planning/agreed-today'
import { asAgreed, draftOf, draftOfSaved, planOfDraft } from '#planning/plan-draft'
import { planFaults } from '#planning/plan-faults'
import type { AgreedToday, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { problemOfRequest } from '#planning/problem-of-request'
import { waitsTold } from '#planning/waits-told'
import { waysOut } from '#planning/ways-out'
import { fairSeconds, noSeconds } from '#rotation/fair-seconds'
import { aFreeGame, aPlanRequest, aPlanRound, randomPlanRequest } from '../support/plan-builder'

const nameOf = (id: string) => id.toUpperCase()

function planned(request: PlanRequest, shown: PracticePlan | null = null): PracticePlan {
  const plan = planOfDraft(draftOf(asAgreed(request, shown)))
  if (!plan) throw new Error('no plan')
  return plan
}

/** What a player does turn by turn, read from the turns alone: `A1`, `K2`, `W` for waiting, `-` for not there. */
function pathOf(plan: PracticePlan, playerId: string): readonly string[] {
  const own = plan.players.find((player) => player.playerId === playerId)
  return plan.turns.map(({ stations }, turn) => {
    const at = stations.flatMap(({ attack, defend, keep }, area) => [
      ...(attack.includes(playerId) ? [`A${area + 1}`] : []),
      ...(defend.includes(playerId) ? [`D${area + 1}`] : []),
      ...(keep.includes(playerId) ? [`K${area + 1}`] : []),
    ])
    const isThere = own?.present.some(([from, to]) => from <= turn + 1 && turn + 1 <= to)
    return at[0] ?? (isThere ? 'W' : '-')
  })
}

function waitingIn(plan: PracticePlan, turn: number): readonly string[] {
  return plan.players.map(({ playerId }) => playerId).filter((id) => pathOf(plan, id)[turn] === 'W')
}

function withAgreed(request: PlanRequest, of: Readonly<Record<string, AgreedToday>>): PlanRequest {
  const players = request.players.map((player) => {
    const agreed = of[player.playerId]
    return agreed ? { ...player, agreed } : player
  })
  return { ...request, players }
}

describe('one side all practice', () => {
  it('without bibs is attacking only, or defending only, by what is owed more, and changes over in the free game', () => {
    for (const [attack, first] of [
      [-300, 'A'],
      [300, 'D'],
    ] as const) {
      const own = { 2: { gap: { ...noSeconds, attack, defend: -attack } } }
      const plan = planned(withAgreed(aPlanRequest({ own }), { p2: { sameSide: true } }))
      const roles = pathOf(plan, 'p2').map((place) => place[0])
      expect(roles.slice(0, 4).every((role) => [first, 'K', 'W'].includes(role ?? ''))).toBe(true)
      expect(roles[5]).toBe(roles[4] === 'A' ? 'D' : roles[4] === 'D' ? 'A' : roles[4])
      expect([first, 'K', 'W']).toContain(roles[4])
      expect(planFaults(plan)).toEqual([])
    }
  })

  it('with bibs that others change is one bib, in the role that it has in the round', () => {
    const rounds = [aPlanRound({ turnCount: 6 }), aPlanRound({ turnCount: 6 })]
    const base = aPlanRequest({ rounds, own: { 2: { side: 1 } } })
    const design = { ...base.design, sides: { names: ['yellow', 'blue'], swap: 'eachRound' } as const }
    const plan = planned(withAgreed({ ...base, design }, { p2: { sameSide: true } }))
    const roles = pathOf(plan, 'p2').map((place) => place[0])
    expect(new Set(roles.slice(0, 6))).not.toContain('A')
    expect(new Set(roles.slice(6))).not.toContain('D')
    expect(plan.turns.some(({ stations }) => stations.some(({ defend }) => defend.includes('p1')))).toBe(true)
  })

  it('says whose side stands in the way, and lets it go', () => {
    const rounds = [aPlanRound({ turnCount: 2, stations: [{ attack: 2, defend: 2, keep: 0 }] })]
    const all = Object.fromEntries(['p1', 'p2', 'p3'].map((id) => [id, { sameSide: true }]))
    const request = asAgreed(withAgreed(aPlanRequest({ players: 4, rounds }), all), null)
    expect(draftOf(request).made).toBeNull()
    const said = 'Let P1, P2 and P3 play for both sides in this practice.'
    const way = waysOut(request, nameOf).find(({ sentences }) => sentences.join() === said)
    expect(draftOf(asAgreed(way?.request ?? request, null)).made).not.toBeNull()
  })
})

describe('never waiting alone', () => {
  const rounds = [aPlanRound({ turnCount: 6 })]

  it('has another wait where only one does', () => {
    const plan = planned(withAgreed(aPlanRequest({ players: 8, rounds }), { p1: { neverWaitsAlone: true } }))
    expect(pathOf(plan, 'p1')).not.toContain('W')
    expect([0, 1, 2, 3, 4, 5].every((turn) => waitingIn(plan, turn).length === 1)).toBe(true)
    // Made without it, the same plan would have been shared by eight.
    const free = planned(
      aPlanRequest({ players: 8, rounds, rules: { restLimit: 1, isGentle: false, keepsSides: false } }),
    )
    expect(planFaults({ ...free, players: plan.players }).length > 0).toBe(pathOf(free, 'p1').includes('W'))
  })

  it('says when that cannot be, and what would work', () => {
    const alone = Object.fromEntries(
      Array.from({ length: 8 }, (_, index) => [`p${index + 1}`, { neverWaitsAlone: true }]),
    )
    const request = withAgreed(aPlanRequest({ players: 8, rounds }), alone)
    const draft = draftOf(request)
    expect(draft.clash[0]).toMatchObject({ rule: 'neverRestsAlone', turn: 0 })
    const [way] = waysOut(request, nameOf)
    expect(way?.sentences).toEqual(['Let P1 wait alone in this practice.'])
    expect(way && draftOf(way.request).made).not.toBeNull()
  })
})

describe('fewer turns by agreement', () => {
  const rounds = [aPlanRound({ turnCount: 12 })]
  const request = aPlanRequest({
    players: 12,
    rounds,
    rules: { restLimit: 1, isGentle: false, keepsSides: false },
  })

  it('is due what the book says that it is due', () => {
    const [full, half] = [request, withAgreed(request, { p1: { dueShare: 0.5 } })].map(
      (asked) => fairSeconds(problemOfRequest(asked))[0],
    )
    let waits = 0
    for (const role of ['attack', 'defend', 'keep'] as const) {
      const book = agreedDue({ role, fairSeconds: full?.[role] ?? 0, fairTurns: 0 }, 0.5)
      expect(half?.[role]).toBeCloseTo(book.dueSeconds, 9)
      waits += book.waitSeconds
    }
    expect(half?.rest).toBeCloseTo((full?.rest ?? 0) + waits, 9)
  })

  it('gives fewer, also where nobody else waits two turns running', () => {
    const turnsOf = (plan: PracticePlan, id: string) =>
      pathOf(plan, id).filter((place) => place !== 'W').length
    const before = planned(request)
    const after = planned(withAgreed(request, { p1: { dueShare: 0.5 } }))
    expect(turnsOf(after, 'p1')).toBeLessThan(turnsOf(before, 'p1') - 1)
    expect(planFaults(after)).toEqual([])
    const told = waitsTold(after, draftOfSaved(after)?.made?.plan ?? [])
    expect(told.turns).toBe(1)
    expect(told.byAgreement).toEqual([expect.objectContaining({ playerId: 'p1' })])
    expect(told.longest?.playerId).not.toBe('p1')
    const others = after.players.map(({ playerId }) => pathOf(after, playerId).join('')).slice(1)
    expect(others.every((path) => !path.includes('WW'))).toBe(true)
  })
})

describe('a first turn beside the same partner', () => {
  it('is held on one side of one area', () => {
    const plan = planned(withAgreed(aPlanRequest({ players: 12 }), { p5: { firstPartner: 'p9' } }))
    expect(pathOf(plan, 'p5')[0]).toBe(pathOf(plan, 'p9')[0])
    expect(pathOf(plan, 'p5')[0]).toMatch(/^[AD]/)
    expect(plan.locks.map(({ agreed, turn }) => [agreed, turn])).toEqual([
      ['partner', 1],
      ['partner', 1],
    ])
  })

  it('waits for the turn in which the later of the two is there, and yields to a pair kept apart', () => {
    const late = aPlanRequest({ players: 12, own: { 5: { present: [[3, 6]] } } })
    const plan = planned(withAgreed(late, { p5: { firstPartner: 'p9' } }))
    expect(pathOf(plan, 'p5')[2]).toBe(pathOf(plan, 'p9')[2])
    const apart = { ...aPlanRequest({ players: 12 }), apart: [['p9', 'p5']] as const }
    expect(planned(withAgreed(apart, { p5: { firstPartner: 'p9' } })).locks).toEqual([])
  })
})

describe('a plan shown early', () => {
  const request = withAgreed(aPlanRequest({ players: 12 }), { p4: { planShownEarly: true } })
  const first = planned(request)

  it('keeps its places when it is planned anew for others, another rule, or a child fewer', () => {
    const others: readonly PlanRequest[] = [
      { ...request, rules: { ...request.rules, restLimit: null } },
      { ...request, players: request.players.filter(({ playerId }) => playerId !== 'p1') },
      { ...request, apart: [['p2', 'p3']] },
    ]
    for (const asked of others) {
      const again = planned(asked, first)
      expect(pathOf(again, 'p4')).toEqual(pathOf(first, 'p4'))
      expect(planFaults(again)).toEqual([])
    }
  })

  it('opens again as it was saved', () => {
    const opened = draftOfSaved(first)
    expect(opened && planOfDraft(opened)).toMatchObject({ turns: first.turns, locks: first.locks })
  })

  it('gives way to a place that the coach holds, and to another design', () => {
    const turn = pathOf(first, 'p4').findIndex((place) => place !== 'W') + 1
    const rest = { turn, playerId: 'p4', place: 'rest' } as const
    const held = planned({ ...request, locks: [rest] }, first)
    expect(pathOf(held, 'p4')[turn - 1]).toBe('W')
    const other = { ...request, design: { ...request.design, name: 'Another practice' } }
    expect(asAgreed(other, first).locks).toEqual([])
  })
})

describe('what was agreed, in requests drawn at random', () => {
  it('is kept in every plan that is made, and the plan has no fault', () => {
    let made = 0
    for (let seed = 100; seed < 130; seed += 1) {
      const request = asAgreed(
        withAgreed(randomPlanRequest(seed), {
          p1: { neverWaitsAlone: true },
          p4: { sameSide: true },
          p7: { dueShare: 0.6, firstPartner: 'p8' },
        }),
        null,
      )
      const plan = planOfDraft(draftOf(request))
      if (!plan) continue
      made += 1
      expect(planFaults(plan)).toEqual([])
      expect(plan.turns.map((_, turn) => waitingIn(plan, turn).join())).not.toContain('p1')
      const roles = pathOf(plan, 'p4').flatMap((place, turn) =>
        request.design.rounds[plan.turns[turn]?.round ?? 0]?.isFreeGame ? [] : [place[0]],
      )
      expect(roles.includes('A') && roles.includes('D')).toBe(false)
      if (plan.locks.some(({ agreed }) => agreed === 'partner'))
        expect(pathOf(plan, 'p7')[0]).toBe(pathOf(plan, 'p8')[0])
    }
    expect(made).toBeGreaterThan(20)
  })
})

describe('what stands on the day', () => {
  it('is kept unless the coach lets it go for this practice', () => {
    const standing = [
      { kind: 'sameSide' },
      { kind: 'fewerTurns', dueShare: 0.7 },
      { kind: 'sameFirstPartner', partnerId: null },
    ] as const
    expect(agreedToday(standing)).toEqual({ sameSide: true, dueShare: 0.7, firstPartner: null })
    const decided = { sameSide: false, firstPartner: 'p2', neverWaitsAlone: true }
    expect(agreedToday(standing, decided)).toEqual({ sameSide: false, dueShare: 0.7, firstPartner: 'p2' })
    expect(knowsAgreed({ ...decided, dueShare: 0.7 }, standing)).toBe(false)
    expect(knowsAgreed({ sameSide: false, dueShare: 0.7, firstPartner: null }, standing)).toBe(true)
    expect(knowsAgreed(undefined, [])).toBe(true)
    expect(knowsAgreed(undefined, standing)).toBe(false)
    const request = withAgreements(aPlanRequest(), (id) => (id === 'p3' ? standing : []))
    expect(request.players.map(({ agreed }) => agreed !== undefined)).toEqual(
      request.players.map(({ playerId }) => playerId === 'p3'),
    )
  })

  it('is no matter of the free game', () => {
    const plan = planned(
      withAgreed(aPlanRequest({ players: 7, rounds: [aFreeGame] }), { p1: { sameSide: true } }),
    )
    expect(planFaults(plan)).toEqual([])
  })
})
