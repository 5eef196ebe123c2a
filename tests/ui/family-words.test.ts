import { describe, expect, it } from 'vitest'
import type { FamilySentence } from '#fairness/family-sentences'
import { shortAnswers } from '#fairness/flags/short-answers'
import { attendanceText } from '#ui/family/attendance-part'
import { familySentenceText, metText, restsOnText } from '#ui/family/family-words'

const topics = ['attack', 'defend', 'keep', 'played'] as const
const steps = [null, ...shortAnswers.map(({ nextStep }) => nextStep), 'the coach will tell you']

const everySentence: readonly FamilySentence[] = topics.flatMap((topic) => [
  ...[true, false].flatMap((isPartMissed) => [
    { says: 'even' as const, topic, isPartMissed },
    ...steps.map((nextStep) => ({ says: 'fewer' as const, topic, isPartMissed, nextStep })),
  ]),
  ...[null, ...topics].map((moreOf) => ({ says: 'more' as const, topic, moreOf })),
])

describe('the words for families', () => {
  it('never are those that weigh a child', () => {
    const forbidden =
      /\b(short|over|gaps?|flag\w*|rest|bench|percentile|player|fold|ledger|exposure|seat|tolerance)\b|[+−-]\d|%/i
    const texts = everySentence.flatMap((sentence) => [
      familySentenceText(sentence, 'practice'),
      familySentenceText(sentence, 'match'),
    ])
    expect(texts.length).toBeGreaterThan(100)
    expect(texts.filter((text) => forbidden.test(text))).toEqual([])
  })

  it('are three sentences and no more', () => {
    const text = (sentence: FamilySentence) => familySentenceText(sentence, 'practice')
    expect(text({ says: 'even', topic: 'attack', isPartMissed: false })).toBe(
      'Your child’s turns at attacking have been about even.',
    )
    expect(text({ says: 'even', topic: 'attack', isPartMissed: true })).toBe(
      'In the practices your child came to, turns at attacking have been about even.',
    )
    const nextStep = 'the coach puts it right next time'
    expect(text({ says: 'fewer', topic: 'attack', isPartMissed: true, nextStep })).toBe(
      'Your child has had fewer turns at attacking than an even turn-taking would give. Part of this is practices missed. The coach has seen this; next step: the coach puts it right next time.',
    )
    expect(text({ says: 'more', topic: 'defend', moreOf: 'attack' })).toBe(
      'Your child has had more turns at defending than an even turn-taking would give and will get more turns at attacking.',
    )
  })

  it('say first what they rest on', () => {
    expect(restsOnText({ held: 14, written: 9 })).toBe(
      'From 9 of the 14 practices and matches held. The other 5 were not written down.',
    )
    expect(restsOnText({ held: 14, written: 13 })).toMatch(/The other 1 was not written down\.$/)
    expect(restsOnText({ held: 14, written: 14 })).toBe('From all 14 practices and matches held.')
    expect(restsOnText({ held: 0, written: 0 })).toBe('No practice or match has been held yet.')
  })

  it('tell what is not written down as that, never as nothing', () => {
    const days = [
      { attendance: 'here' },
      { attendance: 'here' },
      { attendance: null },
      { attendance: 'away' },
    ] as const
    expect(attendanceText(days)).toBe('2 here · 1 away · 1 not written down')
  })

  it('tell a theme that was not met without blame', () => {
    const meeting = {
      playerId: 'ana',
      themeId: 't',
      practices: 3,
      practicesThere: 1,
      practicesPlayed: 0,
      turns: 0,
      seconds: 0,
    }
    expect(metText({ ...meeting, missed: 'away' })).toBe(
      'Not yet. Your child was away when it was practised.',
    )
    expect(metText({ ...meeting, missed: 'noTurn' })).toBe('Not yet. Your child has not had a turn at it.')
    expect(metText({ ...meeting, practicesPlayed: 2, missed: null })).toBe('Played in 2 of 3 practices.')
  })
})
