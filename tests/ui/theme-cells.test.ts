import { describe, expect, it } from 'vitest'
import { meetingCell } from '#ui/themes/meeting-cell'
import { courseText } from '#ui/themes/programme-table'
import { courseSentence } from '#ui/themes/themes-body'
import { weekCell } from '#ui/themes/week-cell'

const week = { week: '2026-W10', firstDay: '2026-03-02', written: 1, held: 1 }
const cell = { week: '2026-W10', metPractices: 0, seconds: 0, metSoFar: 0, dueSoFar: 0 }

describe('a theme in a week', () => {
  const mark = (over: Partial<typeof cell>, at: Partial<typeof week> = {}, isPlanned = true) =>
    weekCell({ ...week, ...at }, { cell: { ...cell, ...over }, isPlanned }).mark

  it('is met, a hole, unknown, or nothing', () => {
    expect(mark({ metPractices: 1, metSoFar: 1 })).toBe('met')
    expect(mark({ dueSoFar: 1 })).toBe('hole')
    expect(mark({ dueSoFar: 1, metSoFar: 1 })).toBe('none')
    expect(mark({ dueSoFar: 1 }, { written: 0 })).toBe('unknown')
    expect(mark({ dueSoFar: 1 }, { written: 0, held: 0 })).toBe('none')
    expect(mark({ dueSoFar: 1 }, {}, false)).toBe('none')
  })

  it('says no hole while a practice of the week is not written down', () => {
    expect(mark({ dueSoFar: 2 }, { written: 1, held: 2 })).toBe('unknown')
  })
})

describe('a player and a theme', () => {
  const meeting = {
    playerId: 'ana',
    themeId: 't',
    missed: null,
    practices: 3,
    practicesThere: 2,
    practicesPlayed: 2,
    turns: 6,
    seconds: 851,
  }
  it('is minutes and turns, or how it was missed', () => {
    expect(meetingCell('t', meeting)).toMatchObject({
      mark: 'met',
      text: '14 min · 6',
      words: '14 min, 6 turns, in 2 of 3 practices',
    })
    expect(meetingCell('t', { ...meeting, missed: 'away' })).toMatchObject({
      mark: 'unknown',
      words: 'wasn’t there',
    })
    expect(meetingCell('t', { ...meeting, missed: 'noTurn' })).toMatchObject({
      mark: 'hole',
      words: 'didn’t get a turn',
    })
    expect(meetingCell('t', undefined).mark).toBe('none')
  })
})

describe('the course of the programme', () => {
  const coverage = { themeId: 't', wishedShare: 0.2, weeks: [], metPractices: 2, duePractices: 3, seconds: 0 }
  it('is told in words', () => {
    expect(courseText(coverage)).toBe('1 practice behind')
    expect(courseText({ ...coverage, metPractices: 3 })).toBe('on course')
    expect(courseText({ ...coverage, metPractices: 0 })).toBe('never met')
    expect(courseText({ ...coverage, wishedShare: 0 })).toBe('met beside the plan')
    expect(courseText(null)).toBe('not in the plan')
    expect(courseSentence({ themes: 4, of: 6 })).toBe('4 of 6 planned themes are on course.')
    expect(courseSentence({ themes: 0, of: 0 })).toBe('Nothing is due yet.')
  })
})
