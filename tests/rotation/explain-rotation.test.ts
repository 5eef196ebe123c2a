import { describe, expect, it } from 'vitest'
import { proofOf } from '#common/proof'
import { explainRotation } from '#rotation/explain-rotation'
import type { RestLimitReport, Rotation } from '#rotation/rotation'
import { problemOf, smallRequest } from '../support/rotation-builder'

const limit: RestLimitReport = { asked: 2, used: 2, leastPossible: 2, proven: true, price: 0, priceAtMost: 0 }

function said(changes: Partial<Rotation>): string {
  return explainRotation(problemOf(smallRequest()), {
    plan: [],
    values: { unfairness: 0, situationUnfairness: 0, roleChanges: 0, mixing: 0 },
    restLimit: limit,
    unfairness: proofOf(100, 100),
    situationUnfairness: proofOf(0, 0),
    mixing: proofOf(4, 0),
    ...changes,
  })
}

describe('what a rotation is worth, in words', () => {
  it('proven', () => {
    expect(said({})).toBe(
      'Nothing fairer is possible with 4 players and 2 turns. Nobody waits more than 2 turns in a row.',
    )
  })

  it('not proven: how near the best it is', () => {
    expect(said({ unfairness: proofOf(100.5, 100) })).toMatch(/^Within 1 % of the best that any plan/)
    expect(said({ unfairness: proofOf(107.2, 100) })).toMatch(/^Within 8 % of the best/)
    expect(said({ unfairness: proofOf(100, 0) })).toMatch(/how much fairer one could be is not known/)
  })

  it('the limit on waiting: what could be kept, and what it costs', () => {
    const more = { ...limit, used: 3, leastPossible: 3, price: 0.123, priceAtMost: 0.123 }
    expect(said({ restLimit: more })).toMatch(
      /more than 3 turns in a row; fewer is not possible .* costs 12\.3 % in evenness/,
    )
    expect(said({ restLimit: { ...more, proven: false } })).toContain('2 was asked for and not found')
    expect(said({ restLimit: { ...more, price: null } })).toContain('costs at most 12.3 %')
    expect(
      said({
        restLimit: { ...limit, asked: null, used: null, leastPossible: null, price: null, priceAtMost: null },
      }),
    ).not.toContain('waits')
  })

  it('is for a coach: no word that the book keeps for itself', () => {
    expect(said({ mixing: proofOf(4, 4) })).toMatch(/Team-mates are mixed as evenly as can be\.$/)
    expect(said({})).not.toMatch(/bound|proven|ledger|seat|gap|exposure/)
  })
})
