import { describe, expect, it } from 'vitest'
import { findAheadClash } from '#ahead/find-ahead-clash'
import { problemOfAhead } from '#ahead/problem-of-request'
import { impossiblePlan } from '#exchange/plan-request/impossible-plan'
import { nearestPlanRequest } from '#exchange/plan-request/nearest-plan-request'
import { readPlanRequest } from '#exchange/plan-request/plan-request'
import type { PlanRequestJson } from '#exchange/plan-request/plan-request-shape'
import { aPlanRequest, withChanged } from '../../support/plan-request-builder'

const impossible = (json: PlanRequestJson) => {
  const read = readPlanRequest(json)
  if (!read.ok) throw new Error(JSON.stringify(read.reasons))
  const problem = problemOfAhead(read.value.request)
  return impossiblePlan(read.value, { problem, clash: findAheadClash(problem), hasTime: () => true })
}
const nearestOf = (json: PlanRequestJson) => nearestPlanRequest(json, { seed: 1, hasTime: () => true })?.json

/** What stands in the way, where it stands, and what alone is let go in the nearest request. */
const clashes: readonly {
  readonly what: string
  readonly json: PlanRequestJson
  readonly requirement: object
  readonly nearest: PlanRequestJson
}[] = [
  {
    what: 'a theme held before the one that it builds on',
    json: {
      ...withChanged('practices', 0, { held: { theme: 'together' } }),
      met: [],
    },
    requirement: {
      rule: 'held',
      path: 'practices[0].held',
      with: [{ rule: 'after', path: 'themes[1].after' }],
      practice: 's1',
    },
    nearest: { ...withChanged('practices', 0, { held: null }), met: [] },
  },
  {
    what: 'a block against a held practice',
    json: {
      ...withChanged('practices', 2, { held: { theme: 'build' } }),
      blocks: [{ theme: 'press', firstWeek: 6, lastWeek: 6 }],
    },
    requirement: {
      rule: 'held',
      path: 'practices[2].held',
      with: [{ rule: 'block', path: 'blocks[0]' }],
      practice: 's3',
    },
    nearest: {
      ...withChanged('practices', 2, { held: null }),
      blocks: [{ theme: 'press', firstWeek: 6, lastWeek: 6 }],
    },
  },
  {
    what: 'more rest between two uses of a design than there are designs',
    json: aPlanRequest({ designRest: 3 }),
    requirement: { rule: 'designRest', path: 'designRest' },
    nearest: aPlanRequest({ designRest: 0 }),
  },
  {
    what: 'a ground on which nothing fits',
    json: withChanged('practices', 1, { ground: { lengthM: 10, widthM: 10 } }),
    requirement: { rule: 'offered', path: 'practices[1]', with: [], practice: 's2' },
    nearest: { ...aPlanRequest(), practices: aPlanRequest().practices.filter(({ id }) => id !== 's2') },
  },
]

describe('a request for the weeks ahead that no plan answers', () => {
  it.each(clashes)('says why and where, and what to let go: $what', ({ json, requirement, nearest }) => {
    const said = impossible(json)
    expect(said.format).toBe('turnbook/impossible@1')
    expect(said.requirements[0]).toMatchObject(requirement)
    for (const { why } of said.requirements) expect(why).toMatch(/^\p{Lu}.*\.$/u)
    expect(said.nearest).toEqual(nearest)
  })

  it('has no nearest request where nothing that is asked stands in the way', () => {
    // Nobody comes: no design can be played, whatever is let go.
    const away = [{ from: '2026-09-07', to: '2026-12-18' }]
    const json = aPlanRequest({ players: aPlanRequest().players.map((own) => ({ ...own, away })) })
    expect(impossible(json)).toMatchObject({ nearest: null })
  })

  it('lets go no more than it has to, and names many of a kind together', () => {
    const many = aPlanRequest({
      blocks: Array.from({ length: 20 }, (_, week) => ({
        theme: week % 2 === 0 ? 'press' : 'build',
        firstWeek: 5,
        lastWeek: 9,
      })),
    })
    expect(nearestOf(many)).toEqual({ ...many, blocks: [] })
    expect(nearestOf(aPlanRequest({ designRest: 3 }))).toEqual(aPlanRequest({ designRest: 0 }))
  })
})
