import { describe, expect, it } from 'vitest'
import { comingWeeks } from '#ahead/missing/coming-weeks'
import { forecastThemes } from '#ahead/missing/forecast-themes'
import { missingOfPlayers } from '#ahead/missing/missing-of-players'
import { themedPractices } from '#fairness/theme-parts'
import { coverProgramme } from '#themes/coverage'
import { anAccount } from '../../support/account-builder'

// Passing stands under building up. Four practices are written, four are to come: two plan passing, one shooting.
const themes = [
  { id: 'build', name: 'Building up', parentId: null, order: 1 },
  { id: 'pass', name: 'Passing', parentId: 'build', order: 1 },
  { id: 'shoot', name: 'Shooting', parentId: null, order: 2 },
]
const programme = [
  { themeId: 'build', wishedShare: 0.5 },
  { themeId: 'shoot', wishedShare: 0.25 },
  { themeId: 'pass', wishedShare: 0 },
]
const played = (themeId: string, seconds: number, fair: number) => ({
  rows: [{ role: 'attack' as const, themeId, seconds, turns: 2, fair }],
})
const away = { rows: [] }
const accounts = [
  anAccount({
    id: '1',
    day: '2026-09-01',
    players: { ada: played('pass', 600, 900), ben: played('pass', 1200, 900) },
  }),
  anAccount({ id: '2', day: '2026-09-08', players: { ada: played('shoot', 600, 600), ben: away } }),
  anAccount({ id: '3', day: '2026-09-15', players: { ada: played('shoot', 600, 600), ben: away } }),
  anAccount({ id: '4', day: '2026-09-22', players: { ada: played('shoot', 600, 600), ben: away } }),
]
const coming = [
  { id: '5', day: '2026-09-29', themeId: 'pass' },
  { id: '6', day: '2026-10-06', themeId: 'pass' },
  { id: '7', day: '2026-10-13', themeId: 'shoot' },
  { id: '8', day: '2026-10-20', themeId: null },
]
const cover = coverProgramme({
  themes,
  programme,
  term: { firstDay: '2026-09-01', lastDay: '2026-09-22' },
  practices: themedPractices(accounts),
})

describe('what is missing of a programme', () => {
  it('carries the squad’s record on to the end of the term', () => {
    const forecast = forecastThemes({ themes, programme, cover, coming })
    expect(forecast).toMatchObject({ coming: 4, open: 1 })
    // Half of eight practices, and a quarter. The open one goes as so far: one of four was building up, three shooting.
    expect(forecast.themes).toEqual([
      { themeId: 'build', met: 1, due: 2, planned: 2, atEnd: 1 + 2 + 0.25, dueAtEnd: 4 },
      { themeId: 'shoot', met: 3, due: 1, planned: 1, atEnd: 3 + 1 + 0.75, dueAtEnd: 2 },
    ])
  })

  it('tells weeks to come by their Mondays, with what is planned in each', () => {
    const twice = [...coming, { id: '9', day: '2026-10-01', themeId: null }]
    const weeks = comingWeeks({ themes, themeIds: ['build', 'shoot'], coming: twice })
    expect(weeks.map(({ firstDay, practices }) => [firstDay, practices])).toEqual([
      ['2026-09-28', 2],
      ['2026-10-05', 1],
      ['2026-10-12', 1],
      ['2026-10-19', 1],
    ])
    // Passing stands under building up, and counts for it.
    expect(weeks.map(({ planned }) => [planned.get('build'), planned.get('shoot')])).toEqual([
      [1, 0],
      [1, 0],
      [0, 1],
      [0, 0],
    ])
  })

  it('says of a player what it had, was offered and may expect', () => {
    const players = [
      {
        id: 'ada',
        came: 4,
        held: 4,
        away: [],
        playedSeconds: 2400,
        themeSeconds: new Map([
          ['build', 600],
          ['shoot', 1800],
        ]),
      },
      {
        id: 'ben',
        came: 1,
        held: 4,
        away: [{ firstDay: '2026-10-01', lastDay: '2026-10-31' }],
        playedSeconds: 1200,
        themeSeconds: new Map([['build', 1200]]),
      },
    ]
    const { rows, method } = missingOfPlayers({ themes, programme, players, accounts, coming })
    // Two records are too few to tell apart: five of eight for both. A visit gave 3,600 s ÷ 5 = 720 s of play.
    expect(method).toBe('squad')
    const visit = 0.625 * 720
    const [adaBuild, adaShoot, benBuild, benShoot] = rows
    expect(adaBuild).toMatchObject({ playerId: 'ada', themeId: 'build', seconds: 600, evenSeconds: 900 })
    expect(adaBuild).toMatchObject({ offered: 1, attended: 1 })
    // Two planned; the open one as so far, where half of all play was building up.
    expect(adaBuild?.endSeconds).toBeCloseTo(600 + 2.5 * visit, 9)
    expect(adaBuild?.endWishedSeconds).toBeCloseTo(0.5 * (2400 + 4 * visit), 9)
    expect(adaShoot?.endSeconds).toBeCloseTo(1800 + 1.5 * visit, 9)
    // Ben is away in October: only the first is left.
    expect(benBuild?.endSeconds).toBeCloseTo(1200 + visit, 9)
    expect(benShoot).toMatchObject({ seconds: 0, evenSeconds: 0, offered: 3, attended: 0 })
    expect(benShoot?.endSeconds).toBe(0)
    expect(benShoot?.endWishedSeconds).toBeCloseTo(0.25 * (1200 + visit), 9)
  })

  it('expects nothing where nothing was written', () => {
    const players = [{ id: 'ada', came: 0, held: 0, away: [], playedSeconds: 0, themeSeconds: new Map() }]
    const { rows, method } = missingOfPlayers({ themes, programme, players, accounts: [], coming })
    expect(method).toBe('none')
    expect(rows.map(({ endSeconds, endWishedSeconds }) => [endSeconds, endWishedSeconds])).toEqual([
      [0, 0],
      [0, 0],
    ])
  })
})
