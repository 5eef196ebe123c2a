import { describe, expect, it } from 'vitest'
import { aboutMinutes } from '#family/about-minutes'
import type { FamilyPage } from '#family/family-page'
import { pageChanges } from '#family/page-changes'
import { sentencesOn } from '#family/sentences-on'
import { whatWaits } from '#family/what-waits'

const fewer = {
  says: 'fewer',
  topic: 'attack',
  isPartMissed: false,
  nextStep: null,
  waitsUntil: '2026-06-16',
} as const

const page: FamilyPage = {
  version: 1,
  upTo: '2026-06-04',
  kinds: [
    {
      kind: 'practice',
      held: 9,
      written: 7,
      said: {
        sentences: [{ says: 'even', topic: 'defend', isPartMissed: false }],
        did: [{ doing: 'attack', minutes: 45, turns: 22 }],
        minutesThere: 120,
      },
      attendance: [{ day: '2026-06-02', attendance: 'here' }],
    },
  ],
  themes: [{ name: 'Passing', depth: 0, missed: null, practices: 3, practicesPlayed: 2 }],
  note: '',
}

const [kind] = page.kinds
const with_ = (change: Partial<FamilyPage['kinds'][number]>): FamilyPage =>
  ({ ...page, kinds: [{ ...kind, ...change }] }) as FamilyPage

describe('what is new on a page', () => {
  it('is everything where nothing was confirmed, and nothing where it reads the same on another day', () => {
    expect(pageChanges(null, page)).toEqual(['first'])
    expect(pageChanges(page, { ...page, upTo: '2026-06-09' })).toEqual([])
  })

  it('is told part by part', () => {
    expect(pageChanges(page, with_({ held: 10 }))).toEqual(['sessions'])
    expect(pageChanges(page, with_({ attendance: [] }))).toEqual(['attendance'])
    expect(pageChanges(page, with_({ said: null }))).toEqual(['sentences', 'minutes'])
    expect(pageChanges(page, { ...page, note: 'Well done.', themes: [] })).toEqual(['themes', 'note'])
  })

  it('does not depend on the order in which a database hands the parts of a sentence back', () => {
    const said = { ...kind?.said, sentences: [{ isPartMissed: false, topic: 'defend', says: 'even' }] }
    expect(pageChanges(page, with_({ said } as never))).toEqual([])
  })
})

it('is nothing where a wait is merely over: the family has read the sentence since', () => {
  const withFewer = (waitsUntil: string | null, upTo: string) => ({
    ...with_({ said: { sentences: [{ ...fewer, waitsUntil }], did: [], minutesThere: 0 } }),
    upTo,
  })
  const before = withFewer('2026-06-16', '2026-06-04')
  expect(pageChanges(before, withFewer(null, '2026-06-16'))).toEqual([])
  expect(pageChanges(before, withFewer('2026-06-18', '2026-06-10'))).toEqual(['sentences'])
})

describe('what waits', () => {
  const waiting = with_({ said: { sentences: [fewer], did: [], minutesThere: 0 } })

  it('is a next step to say, and a note that names another child', () => {
    expect(whatWaits(page, { namesInNote: [] })).toEqual([])
    expect(whatWaits(waiting, { namesInNote: ['Bo'] })).toEqual([
      { what: 'nextStep' },
      { what: 'noteNames', names: ['Bo'] },
    ])
    const due = with_({ said: { sentences: [{ ...fewer, waitsUntil: null }], did: [], minutesThere: 0 } })
    expect(whatWaits(due, { namesInNote: [] })).toEqual([])
  })

  it('is read from its day on even on a page that was confirmed before', () => {
    expect(sentencesOn([fewer], '2026-06-15')).toEqual([])
    expect(sentencesOn([fewer], '2026-06-16')).toEqual([fewer])
  })
})

describe('minutes for families', () => {
  it('are to the nearest five', () => {
    expect([0, 149, 150, 449, 450, 3000].map(aboutMinutes)).toEqual([0, 0, 5, 5, 10, 50])
  })
})
