import { beforeAll, describe, expect, it } from 'vitest'
import { listAccounts } from '#data/accounts'
import { inClub } from '#data/in-club'
import { listThemedPractices } from '#data/themed-practices'
import { themedPractices } from '#fairness/theme-parts'
import { loadPlayerBook } from '#server/player-views'
import { loadThemes } from '#server/theme-views'
import { autumnId, calendarDay, clubId, demoSeason, demoSquads, springId } from '../../seeds/club'
import { playerId } from '../../seeds/names'
import { themeId } from '../../seeds/programme'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

const squadId = demoSquads.underTen.id

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const rowSum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0)

describe('the page of themes', () => {
  it('shows the weeks of a term up to today, each with what was held and what is written', async () => {
    const book = await loadThemes(await demoViewer('idris'), { squadId, query: {} })
    expect(book.term?.id).toBe(springId)
    expect(book.weeks[0]?.firstDay).toBe('2025-12-29')
    expect(book.weeks.at(-1)?.firstDay).toBe('2026-06-08')
    expect(rowSum(book.weeks.map(({ held }) => held))).toBe(book.written.held)
    expect(rowSum(book.weeks.map(({ written }) => written))).toBe(book.written.written)
    expect(book.written.written).toBeLessThan(book.written.held)
  })

  it('finds the theme that was planned and never practised', async () => {
    const book = await loadThemes(await demoViewer('idris'), { squadId, query: {} })
    const skipped = book.rows.find(({ theme }) => theme.id === themeId('winningBack'))
    expect(skipped?.coverage).toMatchObject({ metPractices: 0 })
    expect(skipped?.coverage?.duePractices).toBeGreaterThan(0)
    expect(book.onCourse.themes).toBeLessThan(book.onCourse.of)
    const heading = book.rows.find(({ theme }) => theme.id === themeId('attacking'))
    expect(heading?.isHeading).toBe(true)
    expect(skipped?.isHeading).toBe(false)
  })

  it('says what is missing, player by player, as the meetings above it do, and carries it on to the end', async () => {
    const { missing, rows, programme, players } = await loadThemes(await demoViewer('idris'), {
      squadId,
      query: {},
    })
    const wished = programme.filter(({ wishedShare }) => wishedShare > 0).map((entry) => entry.themeId)
    expect(missing?.forecast.themes.map((own) => own.themeId)).toEqual(wished)
    const coverage = new Map(rows.map((row) => [row.theme.id, row.coverage]))
    for (const { themeId: id, met, atEnd, planned } of missing?.forecast.themes ?? []) {
      expect(met).toBe(coverage.get(id)?.metPractices ?? 0)
      expect(atEnd).toBeGreaterThanOrEqual(met + planned)
    }
    expect(rowSum(missing?.weeks.map(({ practices }) => practices) ?? [])).toBe(missing?.forecast.coming)
    const shown = new Map(players.map(({ id, meetings }) => [id, meetings]))
    expect(missing?.players.rows).toHaveLength((missing?.players.names.length ?? 0) * wished.length)
    for (const own of missing?.players.rows ?? []) {
      const meeting = shown.get(own.playerId)?.get(own.themeId)
      expect(own.offered).toBe(meeting?.practices ?? 0)
      expect(own.attended).toBe(meeting?.practicesThere ?? 0)
      expect(own.seconds).toBeCloseTo(meeting?.seconds ?? 0, 6)
      expect(own.endSeconds).toBeGreaterThanOrEqual(own.seconds)
    }
  })

  it('gives a player the meetings that its own page has, over the terms of the season', async () => {
    const viewer = await demoViewer('idris')
    const terms = await Promise.all(
      [autumnId, springId].map((term) => loadThemes(viewer, { squadId, query: { term } })),
    )
    const own = await loadPlayerBook(viewer, { squadId, playerId: playerId('freya'), query: {} })
    for (const { meeting } of own.themes) {
      const parts = terms.flatMap(({ players }) => {
        const found = players.find(({ id }) => id === meeting.playerId)?.meetings.get(meeting.themeId)
        return found ? [found] : []
      })
      expect(rowSum(parts.map(({ turns }) => turns))).toBe(meeting.turns)
      expect(rowSum(parts.map(({ practices }) => practices))).toBe(meeting.practices)
      expect(rowSum(parts.map(({ seconds }) => seconds))).toBe(meeting.seconds)
    }
  })

  it('is the squad’s coaches’ only', async () => {
    for (const key of ['samir', 'chinwe'] as const)
      await expect(loadThemes(await demoViewer(key), { squadId, query: {} })).rejects.toMatchObject({
        code: 'notAllowed',
      })
  })
})

describe('practices with their themes, asked for by the database', () => {
  it('are what the accounts have, for every squad at once', async () => {
    const days = { from: demoSeason.firstDay, to: calendarDay }
    const squadIds = Object.values(demoSquads).map(({ id }) => id)
    const asked = await inClub(clubId, (tx) => listThemedPractices(tx, { squadIds, ...days }))
    for (const squadId of squadIds) {
      const folded = themedPractices(await inClub(clubId, (tx) => listAccounts(tx, { squadId, ...days })))
      const byId = (themes: readonly { themeId: string; seconds: number }[]) =>
        [...themes].sort((a, b) => (a.themeId < b.themeId ? -1 : 1))
      const own = asked
        .filter((practice) => practice.squadId === squadId)
        .map(({ squadId: _, ...practice }) => practice)
      expect(own).toEqual(folded.map((practice) => ({ ...practice, themes: byId(practice.themes) })))
      expect(own.length).toBeGreaterThan(20)
    }
  })
})
