import { describe, expect, it } from 'vitest'
import { practicePlanShape } from '#exchange/practice-plan-json'
import { readShape } from '#exchange/shape-problems'
import { draftOf, planOfDraft } from '#planning/plan-draft'
import { requestSizeFaults } from '#planning/request-size'
import { practiceLimits } from '#practice/practice-size'
import { aPlanRequest, aPlanRound } from '../support/plan-builder'

const rounds = (count: number, turnCount: number) =>
  Array.from({ length: count }, () => aPlanRound({ turnCount }))

describe('a request larger than a plan can be', () => {
  it.each([
    ['too many turns together', { rounds: rounds(6, 40) }, 'rounds', /have 240 turns together.*200 at most/],
    ['too many rounds', { rounds: rounds(13, 2) }, 'rounds', /are 13, and a practice has 12 at most/],
    ['too many turns of one round', { rounds: rounds(1, 61) }, 'rounds.0.turnCount', /60 at most/],
    ['too many players', { players: 61 }, 'players', /are 61.*60 at most; untick 1/],
  ] as const)('%s: says so, and works nothing out', (_what, of, path, message) => {
    const request = aPlanRequest(of)
    expect(requestSizeFaults(request)).toContainEqual({ path, message: expect.stringMatching(message) })
    const began = performance.now()
    expect(draftOf(request)).toEqual({ request, made: null, clash: [] })
    expect(performance.now() - began).toBeLessThan(100)
  })

  it('begins where the form that is stored and sent ends, and not before', () => {
    const most = aPlanRequest({ players: practiceLimits.players, rounds: rounds(5, 40) })
    expect(requestSizeFaults(most)).toEqual([])
    const plan = planOfDraft(draftOf(aPlanRequest({ rounds: rounds(5, 40) })))
    expect(plan?.turns).toHaveLength(practiceLimits.turns)
    expect(practicePlanShape.safeParse(plan).success).toBe(true)
    const turns = [...(plan?.turns ?? []), ...(plan?.turns.slice(0, 1) ?? [])]
    const { problems } = readShape(practicePlanShape, { ...plan, turns }, ['plan'])
    expect(problems.map(({ message }) => message)).toEqual([
      'is a list; at most 200 turns in all rounds would be right',
    ])
  })
})
