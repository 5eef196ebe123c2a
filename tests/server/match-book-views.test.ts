import { beforeAll, describe, expect, it } from 'vitest'
import { sumAccounts } from '#data/account-sums'
import { inClub } from '#data/in-club'
import { listPeople } from '#data/people'
import { loadSeasonBook } from '#server/book-views'
import { findViewer } from '#server/find-viewer'
import { loadMatchBook } from '#server/match-book-views'
import { autumnId, clubId, demoSquads, personId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'

beforeAll(async () => {
  await loadDemoBook()
}, 60_000)

const viewerOf = async (id: string) => {
  const viewer = await findViewer({ clubId, personId: id })
  if (!viewer) throw new Error(`no viewer ${id}`)
  return viewer
}

const squadIds = Object.values(demoSquads).map(({ id }) => id)

async function bookOf(squadId: string, query = {}) {
  return loadMatchBook(await viewerOf(personId('maren')), { squadId, query })
}

describe('the matches of a season', () => {
  it('say of minutes and even shares what the season book says', async () => {
    for (const squadId of squadIds) {
      const viewer = await viewerOf(personId('maren'))
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
