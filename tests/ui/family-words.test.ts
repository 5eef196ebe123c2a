import { describe, expect, it } from 'vitest'
import { shortAnswers } from '#fairness/flags/short-answers'
import type { FamilySentence } from '#family/family-sentences'
import { attendanceText } from '#ui/family/attendance-part'
import {
  aboutText,
  askLead,
  askNobody,
  comingText,
  confirmedText,
  doingLabel,
  familySentenceText,
  lastLine,
  leftSquad,
  matchesPlayedText,
  meanings,
  metText,
  nothingConfirmed,
  restsOnText,
  tooFewText,
} from '#ui/family/family-words'
import { readingGrade, syllablesIn } from '../support/reading-grade'

const topics = ['attack', 'defend', 'keep', 'played'] as const
const steps = [null, ...shortAnswers.map(({ nextStep }) => nextStep), 'the coach will tell you']

const everySentence: readonly FamilySentence[] = topics.flatMap((topic) => [
  ...[true, false].flatMap((isPartMissed) => [
    { says: 'even' as const, topic, isPartMissed },
    ...steps.map((nextStep) => ({
      says: 'fewer' as const,
      topic,
      isPartMissed,
      nextStep,
      waitsUntil: null,
    })),
  ]),
  ...[null, ...topics].map((moreOf) => ({ says: 'more' as const, topic, moreOf })),
])

const when = { day: '2026-06-11', startsAt: '17:30', place: 'Mill Field' }

/** Everything that stands on a family's page whatever the season was like, in the words it has there. */
const sentences = everySentence.flatMap((sentence) => [
  familySentenceText(sentence, 'practice'),
  familySentenceText(sentence, 'match'),
])
const rest = [
  restsOnText({ held: 14, written: 9 }),
  restsOnText({ held: 14, written: 14 }),
  restsOnText({ held: 0, written: 0 }),
  tooFewText({ kind: 'practice', held: 5, written: 2 }),
  metText({ missed: 'away', practices: 3, practicesPlayed: 0 }),
  metText({ missed: 'noTurn', practices: 3, practicesPlayed: 0 }),
  metText({ missed: null, practices: 3, practicesPlayed: 2 }),
  matchesPlayedText({ matches: 9, starts: 6, lines: ['keeper', 'back', 'middle', 'forward'] }),
  matchesPlayedText({ matches: 9, starts: 9, lines: ['forward'] }),
  matchesPlayedText({ matches: 1, starts: 0, lines: [] }),
  comingText(null),
  comingText({ themeName: null, when: null }),
  comingText({ themeName: 'Two against one', when }),
  nothingConfirmed,
  leftSquad,
  confirmedText({ confirmedBy: 'Ola Brandt', confirmedOn: '2026-06-04' }),
  ...meanings.map(({ word, means }) => `${word}: ${means}`),
  askLead,
  askNobody,
  lastLine,
]
const labels = [
  ...Object.values(doingLabel.practice),
  ...Object.values(doingLabel.match),
  aboutText(0),
  aboutText(45),
]

describe('the words for families', () => {
  it('never are those that weigh a child', () => {
    const forbidden =
      /\b(short|over|gaps?|flag\w*|rest|bench|percentile|player|fold|ledger|exposure|seat|tolerance|token|hash)\b|[+−-]\d|%/i
    const texts = [...sentences, ...rest, ...labels]
    expect(texts.length).toBeGreaterThan(130)
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
    expect(text({ says: 'fewer', topic: 'attack', isPartMissed: true, nextStep, waitsUntil: null })).toBe(
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

  it('tell minutes as about so many, and little as little', () => {
    expect([0, 5, 55].map(aboutText)).toEqual(['under 5 min', 'about 5 min', 'about 55 min'])
  })

  it('tell a theme that was not met without blame', () => {
    const theme = { practices: 3, practicesPlayed: 0 }
    expect(metText({ ...theme, missed: 'away' })).toBe('Not yet. Your child was away when it was practised.')
    expect(metText({ ...theme, missed: 'noTurn' })).toBe('Not yet. Your child has not had a turn at it.')
    expect(metText({ ...theme, practicesPlayed: 2, missed: null })).toBe('Played in 2 of 3 practices.')
  })

  it('tell matches, starts and lines', () => {
    expect(matchesPlayedText({ matches: 9, starts: 6, lines: ['keeper', 'back'] })).toBe(
      'Your child was on the pitch in 9 matches and was on from the start in 6 of them. Your child has played in goal and at the back.',
    )
    expect(matchesPlayedText({ matches: 1, starts: 1, lines: [] })).toBe(
      'Your child was on the pitch in 1 match and was on from the start.',
    )
    expect(matchesPlayedText({ matches: 1, starts: 0, lines: [] })).toBe(
      'Your child was on the pitch in 1 match and came on later.',
    )
  })

  it('tell time and place only where they are given', () => {
    const themeName = 'Two against one'
    expect(comingText({ themeName, when: null })).toBe('The next practice is about: Two against one.')
    expect(comingText({ themeName, when })).toBe(
      'The next practice is about: Two against one. It is on Thu, 11 Jun 2026, 17:30, Mill Field.',
    )
  })
})

describe('the reading age of the page', () => {
  it('is measured as it is published', () => {
    // Both worked in the article “Flesch–Kincaid readability tests” of Wikipedia: 24 syllables in 13 words are grade 11.3;
    // the second by the formula itself, six words of one syllable.
    const platypus = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.'
    const words = platypus.match(/\p{L}+/gu) ?? []
    expect(words.length).toBe(13)
    expect(words.reduce((sum, word) => sum + syllablesIn(word), 0)).toBe(24)
    expect(readingGrade(platypus)).toBeCloseTo(11.3, 1)
    expect(readingGrade('The cat sat on the mat.')).toBeCloseTo(-1.45, 2)
  })

  it('is eleven or less: grade six, as a whole and part by part', () => {
    expect(readingGrade(sentences.join(' '))).toBeLessThanOrEqual(6)
    expect(readingGrade(rest.join(' '))).toBeLessThanOrEqual(6)
    // A single sentence says little by this formula; none may be far off.
    expect([...sentences, ...rest].filter((text) => readingGrade(text) > 9)).toEqual([])
    // A text as offices write it would not pass.
    expect(
      readingGrade('Participation discrepancies are predominantly attributable to absences.'),
    ).toBeGreaterThan(12)
  })
})
