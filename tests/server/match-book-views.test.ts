import { beforeAll, describe, expect, it } from 'vitest'
import { allDays } from '#common/time'
import { sumAccounts } from '#data/account-sums'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { sumMatchDays } from '#data/match-day-sums'
import { recordMatchFormats, setFormatOfSquad } from '#data/match-formats'
import { listPeople } from '#data/people'
import { plainFormat } from '#lineup/draft/plain-format'
import { loadSeasonBook } from '#server/book-views'
import { findViewer } from '#server/find-viewer'
import { loadMatchBook } from '#server/match-book-views'
import { loadReview } from '#server/review-views'
import { autumnId, clubId, demoSquads, springId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'
import { demoViewer } from '../support/demo-viewer'

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const squadIds = Object.values(demoSquads).map(({ id }) => id)

async function bookOf(squadId: string, query = {}) {
  return loadMatchBook(await demoViewer('maren'), { squadId, query })
}

describe('the matches of a season', () => {
  it('say of minutes and even shares what the season book says', async () => {
    for (const squadId of squadIds) {
      const viewer = await demoViewer('maren')
      const { members } = await bookOf(squadId)
      const season = await loadSeasonBook(viewer, { squadId, query: { kind: 'match' } })
      expect(members.map(({ player }) => player.name)).toEqual(
        season.members.map(({ player }) => player.name),
      )
      for (const [index, { player, played, matchesThere, thereSeconds }] of members.entries()) {
        const row = season.members[index]
        const sum = (of: 'seconds' | 'dueSeconds') =>
          (row?.figures ?? []).reduce((all, { role, figure }) => all + (role === 'rest' ? 0 : figure[of]), 0)
        expect(played.seconds, player.name).toBeCloseTo(sum('seconds'), 4)
        expect(played.dueSeconds, player.name).toBeCloseTo(sum('dueSeconds'), 4)
        expect([matchesThere, thereSeconds]).toEqual([row?.sessionsThere, row?.liveSeconds])
      }
    }
  })

  it('have the lines of every player as the accounts sum them', async () => {
    for (const squadId of squadIds) {
      const { members, days } = await bookOf(squadId)
      if (!days) throw new Error('the season has not begun')
      const sums = await inClub(clubId, (tx) =>
        sumAccounts(tx, { squadIds: [squadId], ...days, kinds: ['match'] }),
      )
      for (const { player, lines, offSeconds } of members) {
        const own = sums.filter(({ playerId, isMember }) => playerId === player.id && isMember)
        const of = (keep: (line: (typeof own)[number]) => boolean) =>
          own.filter(keep).reduce((all, { seconds }) => all + seconds, 0)
        expect(lines.keeper).toBeCloseTo(
          of(({ role }) => role === 'keep'),
          4,
        )
        for (const line of ['back', 'middle', 'forward'] as const)
          expect(lines[line]).toBeCloseTo(
            of((one) => one.line === line),
            4,
          )
        expect(offSeconds).toBeCloseTo(
          of(({ role }) => role === 'rest'),
          4,
        )
      }
    }
  })

  it('share out as many starts as there are places, the even shares too', async () => {
    const { matches } = await bookOf(demoSquads.underTen.id)
    expect(matches.length).toBeGreaterThan(5)
    for (const { figures } of matches) {
      const starts = figures.filter(({ isStart }) => isStart).length
      expect(starts).toBeGreaterThan(4)
      expect(figures.reduce((sum, { dueStarts }) => sum + dueStarts, 0)).toBeCloseTo(starts, 6)
    }
  })

  it('are those of a term where one is asked for', async () => {
    const whole = await bookOf(demoSquads.underTen.id)
    const autumn = await bookOf(demoSquads.underTen.id, { term: autumnId })
    expect(autumn.termId).toBe(autumnId)
    expect(autumn.matches.length).toBeLessThan(whole.matches.length)
    expect(autumn.matches.every(({ day }) => day <= '2025-12-31')).toBe(true)
    expect((await bookOf(demoSquads.underTen.id, { term: 'none' })).matches).toEqual(whole.matches)
  })

  it('add up to days, whichever squads a player played in', async () => {
    const books = await Promise.all(squadIds.map((squadId) => bookOf(squadId)))
    const byDay = new Map<string, number>()
    for (const { day, figures } of books.flatMap(({ matches }) => matches))
      for (const { playerId, playedSeconds } of figures.filter((figure) => figure.playedSeconds > 0))
        byDay.set(`${day} ${playerId}`, (byDay.get(`${day} ${playerId}`) ?? 0) + playedSeconds)
    const playerIds = [...new Set(books.flatMap(({ players }) => players.map(({ id }) => id)))]
    const days = await inClub(clubId, (tx) => sumMatchDays(tx, { playerIds, ...allDays }))
    expect(days.length).toBeGreaterThan(100)
    expect(new Map(days.map((one) => [`${one.day} ${one.playerId}`, one.playedSeconds]))).toEqual(byDay)
  })

  it('are held against the squad’s own format: its promise, and its limit of a day', async () => {
    const squadId = demoSquads.underTwelve.id
    const before = await bookOf(squadId)
    await inClub(clubId, async (tx) => {
      const leastTime = { share: 1, periods: null, late: [], wherePossible: false }
      const format = { ...plainFormat, leastTime, mostSecondsADay: 3000 }
      const id = newId()
      await recordMatchFormats(tx, [{ id, format, takenFrom: null }])
      await setFormatOfSquad(tx, { squadId, formatId: id })
    })
    const after = await bookOf(squadId)
    const offFor = (book: typeof after) =>
      book.matches.flatMap(({ figures }) =>
        figures.filter((own) => own.isMember && own.playedSeconds < own.thereSeconds),
      )
    expect(after.below.map(({ figure }) => figure)).toEqual(offFor(after))
    expect(before.below.length).toBeLessThan(after.below.length)
    const long = after.matches.flatMap(({ figures }) => figures.filter((own) => own.playedSeconds > 3000))
    expect(after.longDays.length).toBeGreaterThanOrEqual(long.length)
    expect(long.length).toBeGreaterThan(0)
    expect(after.longDays.every(({ playedSeconds }) => playedSeconds > 3000)).toBe(true)
    // The review asks the database for the same.
    const review = await loadReview(await demoViewer('maren'), { query: { term: springId } })
    const { below, matches } = await bookOf(squadId, { term: springId })
    expect(review.squads.find(({ squad }) => squad.id === squadId)?.leastTime).toEqual({
      share: 1,
      matches: matches.length,
      matchesBelow: new Set(below.map(({ sessionId }) => sessionId)).size,
      timesBelow: below.length,
      timesThroughout: below.filter(({ reason }) => reason === null).length,
    })
    expect(below.length).toBeGreaterThan(10)
  })

  it('are for who may see the squad only', async () => {
    const people = await inClub(clubId, listPeople)
    const opened: string[] = []
    for (const { id, name } of people) {
      const viewer = await findViewer({ clubId, personId: id })
      if (!viewer) continue
      const asked = loadMatchBook(viewer, { squadId: demoSquads.underTwelve.id, query: {} })
      await asked.then(
        () => opened.push(name),
        (error) => expect(error).toMatchObject({ code: expect.stringMatching(/notAllowed|notFound/) }),
      )
    }
    expect(opened).not.toContain('Idris Fallowmere')
    expect(opened).not.toContain('Chinwe Fernhollow')
    expect(opened).toEqual(expect.arrayContaining(['Maren Oakenshade', 'Samir Goldenreed']))
  })
})
