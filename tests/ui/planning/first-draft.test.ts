import { describe, expect, it } from 'vitest'
import { designForDay, withDesign } from '#planning/new-request'
import { draftOf, planOfDraft } from '#planning/plan-draft'
import type { PracticePlan } from '#planning/practice-plan'
import { noSeason } from '#planning/season-gaps'
import { plainSheet } from '#practice/design-sheet'
import { firstDraft, type PlanningStart } from '#ui/planning/first-draft'
import { aPlanRequest, aPlanRound } from '../../support/plan-builder'

const saved = planOfDraft(draftOf(aPlanRequest({ players: 9 }))) as PracticePlan
const day = '2026-09-08'

/** The page as it opens on the saved plan. */
function opened(change: Partial<PlanningStart>) {
  return firstDraft({
    session: { day, designId: null },
    plan: saved,
    players: saved.players.map(({ playerId }) => ({
      id: playerId,
      name: playerId,
      keeps: true,
      isMember: true,
      agreements: [],
      season: { practice: noSeason, withMatches: noSeason },
    })),
    themeShort: new Map(),
    register: [],
    designs: [],
    pairs: [],
    policy: { restLimitTurns: 2 },
    ...change,
  })
}

/** Turns in which two are in one area. */
function meetings(plan: PracticePlan | null, one: string, other: string): number {
  return (plan?.turns ?? []).filter(({ stations }) =>
    stations.some((station) => {
      const all = [...station.attack, ...station.defend, ...station.keep]
      return all.includes(one) && all.includes(other)
    }),
  ).length
}

const pair = (one: string, other: string) => ({
  id: `${one} ${other}`,
  kind: 'apart' as const,
  playerIds: [one, other] as const,
  firstDay: '2026-09-01',
  lastDay: null,
})

/** Two who meet in the plan that was saved. */
const [one, other] = ['p1', 'p2', 'p3', 'p4']
  .flatMap((mine, index) =>
    ['p1', 'p2', 'p3', 'p4'].slice(index + 1).map((theirs) => [mine, theirs] as const),
  )
  .find(([mine, theirs]) => meetings(saved, mine, theirs) > 0) as readonly [string, string]

describe('a plan that is begun', () => {
  const design = {
    ...plainSheet,
    id: 'd1',
    name: 'Two sides',
    themeId: null,
    areaLengthM: 30,
    areaWidthM: 20,
    rounds: [aPlanRound({ stations: [{ attack: 2, defend: 1, keep: 0 }] })],
  }
  const sides = { names: ['Red', 'Blue'] as const, swap: 'eachRound' as const }
  const sidesOf = (draft: ReturnType<typeof opened>) => draft.request.players.map(({ side }) => side)

  it('has everyone in bibs where the design has sides, unless the coach says otherwise (a rule of our own)', () => {
    const draft = opened({ plan: null, designs: [{ ...design, sides }] })
    expect(draft.request.rules.keepsSides).toBe(true)
    expect([0, 1, null].map((side) => sidesOf(draft).filter((own) => own === side).length).sort()).toEqual([
      0, 4, 5,
    ])
    expect(planOfDraft(draft)).not.toBeNull()
  })

  it('has none where the design has none, and they come with another design', () => {
    const draft = opened({ plan: null, designs: [design] })
    expect([draft.request.rules.keepsSides, new Set(sidesOf(draft))]).toEqual([false, new Set([null])])
    const other = withDesign(draft.request, designForDay({ ...design, sides }))
    expect([other.rules.keepsSides, other.players.every(({ side }) => side !== null)]).toEqual([true, true])
    const free = { ...other, rules: { ...other.rules, keepsSides: false } }
    expect(withDesign(free, designForDay({ ...design, sides })).rules.keepsSides).toBe(false)
  })
})

describe('a plan that was saved, opened again', () => {
  it('is as it was where nothing has changed', () => {
    expect(planOfDraft(opened({}))?.turns).toEqual(saved.turns)
  })

  it('keeps apart whom somebody has noted since', () => {
    const plan = planOfDraft(opened({ pairs: [pair(one, other)] }))
    expect(plan?.apart).toEqual([[one, other]])
    expect(meetings(plan, one, other)).toBe(0)
  })

  it('lets meet whom the coach let meet in this practice, and whoever is kept apart no more', () => {
    const meet = opened({ plan: { ...saved, mayMeet: [[other, one]] }, pairs: [pair(one, other)] })
    expect(planOfDraft(meet)).toMatchObject({ apart: [], turns: saved.turns })
    expect(opened({ plan: { ...saved, apart: [['p8', 'p9']] } }).request.apart).toEqual([])
  })

  it('is made anew where somebody in goal keeps no more', () => {
    const keeper = saved.turns[0]?.stations[0]?.keep[0]
    const players = saved.players.map(({ playerId }) => ({
      id: playerId,
      name: playerId,
      keeps: playerId !== keeper,
      isMember: true,
      agreements: [],
      season: { practice: noSeason, withMatches: noSeason },
    }))
    const plan = planOfDraft(opened({ players }))
    expect(plan?.turns).toHaveLength(saved.turns.length)
    expect(plan?.turns.some(({ stations }) => stations.some(({ keep }) => keep.includes(keeper ?? '')))).toBe(
      false,
    )
  })
})
