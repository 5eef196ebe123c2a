import { describe, expect, it } from 'vitest'
import { coverProgramme } from '#themes/coverage'

const themes = [
  { id: 'attacking', name: 'Attacking', parentId: null, order: 1 },
  { id: 'overlap', name: 'Overlap', parentId: 'attacking', order: 1 },
  { id: 'pressing', name: 'Pressing', parentId: null, order: 2 },
]
const on = (sessionId: string, day: string, ...met: readonly string[]) => ({
  sessionId,
  day,
  themes: met.map((themeId) => ({ themeId, seconds: 300 })),
})

const coverage = coverProgramme({
  themes,
  programme: [
    { themeId: 'attacking', wishedShare: 0.5 },
    { themeId: 'pressing', wishedShare: 0.5 },
  ],
  term: { firstDay: '2026-12-21', lastDay: '2027-01-08' },
  practices: [
    on('before', '2026-12-18', 'pressing'),
    on('a', '2026-12-22', 'overlap', 'attacking'),
    on('b', '2026-12-24', 'overlap'),
    on('c', '2026-12-31', 'attacking'),
    on('d', '2027-01-02'),
  ],
})

describe('the programme over the weeks of a term', () => {
  it('has every week, week 53 too, with its practices', () => {
    expect(coverage.weeks).toEqual(['2026-W52', '2026-W53', '2027-W01'])
    expect(coverage.practicesByWeek).toEqual([2, 2, 0])
  })

  it('counts a theme for those it stands under, a practice once', () => {
    const attacking = coverage.themes.find((theme) => theme.themeId === 'attacking')
    expect(
      attacking?.weeks.map((week) => [week.metPractices, week.seconds, week.metSoFar, week.dueSoFar]),
    ).toEqual([
      [2, 900, 2, 1],
      [1, 300, 3, 2],
      [0, 0, 3, 2],
    ])
  })

  it('shows a theme that was skipped as due and not met', () => {
    expect(coverage.themes.find((theme) => theme.themeId === 'pressing')).toMatchObject({
      metPractices: 0,
      duePractices: 2,
      seconds: 0,
    })
    expect(coverage.onCourse).toEqual({ themes: 1, of: 2 })
  })

  it('lists what was met beside the programme after it', () => {
    expect(coverage.themes.map((theme) => [theme.themeId, theme.wishedShare])).toEqual([
      ['attacking', 0.5],
      ['pressing', 0.5],
      ['overlap', 0],
    ])
  })
})
