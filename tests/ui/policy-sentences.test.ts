import { describe, expect, it } from 'vitest'
import { defaultPolicy, type Policy } from '#squad/policy'
import { heldText } from '#ui/policy/held-text'
import { policySentences } from '#ui/policy/policy-sentences'

const textOf = (about: string, policy: Partial<Policy> = {}) =>
  policySentences({ ...defaultPolicy, ...policy }).find((one) => one.about === about)?.text

describe('the rules as sentences', () => {
  it('say every setting of the policy: a change of any one changes the text', () => {
    const all = (policy: Policy) =>
      policySentences(policy)
        .map(({ text }) => text)
        .join('\n')
    const said = all(defaultPolicy)
    const changed: Policy = {
      toleranceSeconds: 420,
      toleranceShare: 0.1,
      middleAttackShare: 0.4,
      restLimitTurns: 3,
      goalShareLimit: 0.3,
      leastMatchShare: 0.6,
      writtenShareNeeded: 0.7,
      sessionsBeforeFlags: 5,
      matchesBeforeRoles: 6,
    }
    for (const key of Object.keys(defaultPolicy) as (keyof Policy)[]) {
      expect(all({ ...defaultPolicy, [key]: changed[key] }), key).not.toBe(said)
    }
  })

  it('read as a coach would say them', () => {
    expect(textOf('About even')).toBe(
      'A difference of up to 10 minutes from an even share is about even, or up to 15 % of the share where that is more.',
    )
    expect(textOf('Waiting', { restLimitTurns: 1 })).toBe('Nobody waits more than 1 turn in a row.')
    expect(textOf('Goal')).toBe('Nobody is in goal for more than half of their time in a term.')
    expect(textOf('The middle', { middleAttackShare: 0.4 })).toBe(
      'Time in the middle of a match counts 40 % as attack and 60 % as defence.',
    )
  })

  it('say the ends of a scale in words of their own', () => {
    expect(textOf('About even', { toleranceSeconds: 0 })).toBe(
      'A difference of up to 15 % of an even share is about even.',
    )
    expect(textOf('About even', { toleranceSeconds: 0, toleranceShare: 0 })).toBe(
      'Any difference from an even share is one.',
    )
    expect(textOf('The middle', { middleAttackShare: 0 })).toBe(
      'Time in the middle of a match counts as defence.',
    )
    expect(textOf('Writing down', { writtenShareNeeded: 0 })).toBe(
      'A squad is judged however little is written down.',
    )
  })
})

describe('the days on which rules held', () => {
  // ISO 8601: 1 September 2025 is in week 36; 4 January 2026 is the Sunday of week 1.
  it('are told with their weeks', () => {
    expect(heldText({ from: '2025-09-01', to: '2026-01-04', state: 'past' })).toMatch(
      /^Mon,? 1 Sept 2025 to Sun,? 4 Jan 2026 \(week 36 of 2025 to week 1 of 2026\)$/,
    )
    expect(heldText({ from: '2026-12-28', to: null, state: 'inForce' })).toMatch(/from week 53 of 2026/)
  })
})
