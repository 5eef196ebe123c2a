import { describe, expect, it } from 'vitest'
import { subjectNames, tellFlag } from '#fairness/book/told-flag'
import { flagRules } from '#fairness/flags/registry'

const names = subjectNames({
  themes: [{ id: 'space', name: 'Finding space' }],
  terms: [{ id: 'spring', name: 'Spring term' }],
})

const flag = {
  rule: 'attackShort',
  scope: 'practice' as const,
  subject: '',
  gapSeconds: -4745,
  toleranceSeconds: 2580,
  size: 4745,
  since: '2025-09-30',
  isClosing: true,
  cure: { kind: 'moreTurns' as const, turns: 44, seconds: 2165 },
}

describe('a flag told to a coach', () => {
  it('speaks in the words of its rule, with the smallest cure', () => {
    expect(tellFlag(flag, names)).toEqual({
      rule: 'attackShort',
      scope: 'practice',
      title: 'Little attacking',
      sentence: '79 min less attacking than an even share; up to 43 min is about even.',
      cure: '44 turns more would bring it to about even.',
      since: '2025-09-30',
      isClosing: true,
      isQuiet: false,
    })
  })

  it('names the theme or the term it is about', () => {
    const sentenceOf = (rule: string, subject: string) =>
      tellFlag({ ...flag, rule, subject, gapSeconds: 300 }, names)?.sentence
    expect(sentenceOf('themeNeverPlayed', 'space')).toContain('“Finding space”')
    expect(sentenceOf('goalShareOver', 'spring')).toContain('“Spring term”')
  })

  it('has words for every rule there is', () => {
    for (const { name } of flagRules) {
      const told = tellFlag(
        {
          ...flag,
          rule: name,
          subject: 'outnumbering',
          cure: { kind: 'advice', turns: null, seconds: null },
        },
        names,
      )
      expect(told?.sentence.length).toBeGreaterThan(10)
      expect(told?.cure.length).toBeGreaterThan(10)
    }
  })

  it('keeps silent for a rule that is no longer kept', () => {
    expect(tellFlag({ ...flag, rule: 'gone' }, names)).toBeNull()
  })
})
