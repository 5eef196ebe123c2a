import { describe, expect, it } from 'vitest'
import { defaultPolicy, type PolicyVersion } from '#squad/policy'
import { policyHistory } from '#squad/policy-history'

const version = (id: string, effectiveFrom: string, ageLimit: number | null = null): PolicyVersion => ({
  id,
  ageLimit,
  effectiveFrom,
  policy: defaultPolicy,
})

const spans = (versions: readonly PolicyVersion[], ageLimit: number | null, today = '2026-06-08') =>
  policyHistory(versions, { ageLimit, today }).map(({ version, from, to, state }) => [
    version.id,
    from,
    to,
    state,
  ])

describe('the history of the rules', () => {
  it('gives every version the days until the next one', () => {
    const versions = [version('c', '2026-09-01'), version('b', '2026-01-05'), version('a', '2025-09-01')]
    expect(spans(versions, null)).toEqual([
      ['c', '2026-09-01', null, 'toCome'],
      ['b', '2026-01-05', '2026-08-31', 'inForce'],
      ['a', '2025-09-01', '2026-01-04', 'past'],
    ])
  })

  it('holds on its first and on its last day', () => {
    const versions = [version('b', '2026-01-05'), version('a', '2025-09-01')]
    expect(spans(versions, null, '2026-01-04').map(([, , , state]) => state)).toEqual(['toCome', 'inForce'])
    expect(spans(versions, null, '2026-01-05').map(([, , , state]) => state)).toEqual(['inForce', 'past'])
  })

  it('says of a version replaced for the same day that it never held', () => {
    const versions = [version('later', '2026-01-05'), version('sooner', '2026-01-05')]
    expect(spans(versions, null)).toEqual([
      ['later', '2026-01-05', null, 'inForce'],
      ['sooner', '2026-01-05', '2026-01-04', 'replacedSameDay'],
    ])
  })

  it('keeps the ages apart from each other and from the club', () => {
    const versions = [version('ten', '2026-02-01', 10), version('club', '2025-09-01')]
    expect(spans(versions, 10)).toEqual([['ten', '2026-02-01', null, 'inForce']])
    expect(spans(versions, 12)).toEqual([])
    expect(spans(versions, null)).toEqual([['club', '2025-09-01', null, 'inForce']])
  })
})
