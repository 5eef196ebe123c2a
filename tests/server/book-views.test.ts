import { beforeAll, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { listAccounts } from '#data/accounts'
import { fewerTurnsOf, listAdjustments } from '#data/adjustments'
import { inClub } from '#data/in-club'
import { listPeople } from '#data/people'
import { listSquads } from '#data/squads'
import { listThemes } from '#data/themes'
import { listPassed } from '#data/turn-sums'
import { type Role, roles, type Situation } from '#exposure/column'
import type { AccountLine, SessionAccount } from '#fairness/account'
import { causeOf } from '#fairness/cause'
import { standingsNow } from '#fairness/standing'
import { loadSeasonBook, type SeasonBook } from '#server/book-views'
import { findViewer } from '#server/find-viewer'
import { themeAndBelow } from '#themes/theme-lines'
import { clubId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'

let headCoach: Viewer
let squadIds: readonly string[]
let accounts: readonly SessionAccount[]
let playerIds: readonly string[]

async function viewersOf(role: Viewer['role']): Promise<readonly Viewer[]> {
  const people = (await inClub(clubId, listPeople)).filter((one) => one.role === role)
  const viewers = await Promise.all(people.map(({ id }) => findViewer({ clubId, personId: id })))
  return viewers.filter((viewer) => viewer !== null)
}

async function viewerOf(role: Viewer['role']): Promise<Viewer> {
  const [viewer] = await viewersOf(role)
  if (!viewer) throw new Error(`the demo club has no ${role}`)
  return viewer
}

beforeAll(async () => {
  await loadDemoBook()
  headCoach = await viewerOf('headCoach')
  squadIds = (await inClub(clubId, listSquads)).map(({ id }) => id)
}, 60_000)

// What a page is held against: the accounts themselves, folded by the core, not summed by the database.
async function foldOf(
  book: SeasonBook,
  keep: (line: AccountLine) => boolean,
): Promise<ReturnType<typeof standingsNow>> {
  if (!book.days) throw new Error('no day of this has come')
  const at = { squadId: book.squad.id, ...book.days }
  return inClub(clubId, async (tx) => {
    accounts = (await listAccounts(tx, at))
      .filter(({ kind }) => kind === book.filter.kind)
      .map((account) => ({ ...account, lines: account.lines.filter(keep) }))
    playerIds = [...new Set(accounts.flatMap(({ presences }) => presences.map(({ playerId }) => playerId)))]
    const agreements = fewerTurnsOf(await listAdjustments(tx, playerIds))
    return standingsNow({ accounts, agreements, passed: await listPassed(tx, at) })
  })
}

function expectSame(book: SeasonBook, standings: ReturnType<typeof standingsNow>): void {
  expect(book.members.length).toBeGreaterThan(10)
  for (const { player, figures } of book.members) {
    const standing = standings.get(player.id)?.[book.filter.kind]
    if (!standing) throw new Error(`no standing of ${player.name}`)
    for (const { role, figure } of figures) {
      const folded = standing.roles[role]
      const cause = causeOf(folded)
      expect(figure.seconds, `${player.name} ${role}`).toBeCloseTo(folded.seconds, 6)
      expect(figure.dueSeconds).toBeCloseTo(folded.dueSeconds, 6)
      expect(figure.turns).toBe(folded.turns)
      expect(figure.dueTurns).toBeCloseTo(folded.dueTurns, 6)
      expect(figure.cause?.missed).toBeCloseTo(cause.missed, 6)
      expect(figure.cause?.goalDuty).toBeCloseTo(cause.goalDuty, 6)
    }
  }
}

describe('the season book of a squad', () => {
  it('says what the core makes of the same season, practices and matches', async () => {
    for (const squadId of squadIds) {
      for (const kind of ['practice', 'match']) {
        const book = await loadSeasonBook(headCoach, { squadId, query: { kind } })
        expectSame(book, await foldOf(book, () => true))
      }
    }
  })

  it('looks at one theme together with those under it', async () => {
    const [squadId = ''] = squadIds
    const themes = await inClub(clubId, listThemes)
    const parent = themes.find(({ id }) => themes.some(({ parentId }) => parentId === id))
    if (!parent) throw new Error('the demo programme has no theme with others under it')
    const wanted = themeAndBelow(themes, parent.id)
    const book = await loadSeasonBook(headCoach, { squadId, query: { theme: parent.id } })
    expect(book.filter.themeId).toBe(parent.id)
    expectSame(book, await foldOf(book, ({ themeId }) => themeId !== null && wanted.has(themeId)))
  })

  it('looks at attack and defence by the numbers a side had', async () => {
    const [squadId = ''] = squadIds
    for (const situation of ['outnumbering', 'level', 'outnumbered'] satisfies Situation[]) {
      const book = await loadSeasonBook(headCoach, { squadId, query: { situation } })
      expect(book.members[0]?.figures.map(({ role }) => role)).toEqual(['attack', 'defend'] satisfies Role[])
      expectSame(book, await foldOf(book, (line) => line.situation === situation))
    }
  })

  it('looks at one term, and its terms add up to the season', async () => {
    const [squadId = ''] = squadIds
    const whole = await loadSeasonBook(headCoach, { squadId, query: {} })
    const terms = await Promise.all(
      whole.season.terms.map((term) => loadSeasonBook(headCoach, { squadId, query: { term: term.id } })),
    )
    expect(terms.map(({ filter }) => filter.termId)).toEqual(whole.season.terms.map(({ id }) => id))
    const seconds = (book: SeasonBook, playerId: string, role: Role) =>
      book.members.find(({ player }) => player.id === playerId)?.figures.find((one) => one.role === role)
        ?.figure.seconds ?? 0
    for (const { player } of whole.members) {
      for (const role of roles) {
        const sum = terms.reduce((total, book) => total + seconds(book, player.id, role), 0)
        expect(sum).toBeCloseTo(seconds(whole, player.id, role), 6)
      }
    }
  })

  it('shows every count of what is written as the sessions have it', async () => {
    const [squadId = ''] = squadIds
    const book = await loadSeasonBook(headCoach, { squadId, query: {} })
    await foldOf(book, () => true)
    expect(book.written.held).toBe(accounts.length)
    expect(book.written.written).toBe(accounts.filter(({ written }) => written !== 'notWritten').length)
    expect(book.written.asPlanned).toBe(accounts.filter(({ written }) => written === 'asPlanned').length)
    expect(book.written.written).toBeLessThan(book.written.held)
  })

  it('puts players in the order of their names and guests apart', async () => {
    const books = await Promise.all(
      squadIds.map((squadId) => loadSeasonBook(headCoach, { squadId, query: {} })),
    )
    for (const { members } of books) {
      const names = members.map(({ player }) => player.name)
      expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, 'en')))
    }
    const guests = books.flatMap((book) => book.guests)
    expect(guests.length).toBeGreaterThan(0)
    expect(guests.every(({ figures }) => figures.every(({ figure }) => figure.cause === null))).toBe(true)
  })

  it('takes what an address asks for and is not there as all of it', async () => {
    const [squadId = ''] = squadIds
    const query = { term: 'gone', theme: 'gone', kind: 'both', situation: ['level', 'level'] }
    const { filter } = await loadSeasonBook(headCoach, { squadId, query })
    expect(filter).toEqual({ kind: 'practice', termId: null, themeId: null, situation: null })
  })
})

describe('who may open a season book', () => {
  it('is a coach for its own squads only', async () => {
    const coaches = await viewersOf('coach')
    expect(coaches.some(({ squadIds: own }) => own.length === 1)).toBe(true)
    for (const coach of coaches) {
      for (const squadId of squadIds) {
        const opening = loadSeasonBook(coach, { squadId, query: {} })
        if (coach.squadIds.includes(squadId)) {
          expect((await opening).frame.squads.map(({ id }) => id)).toEqual(coach.squadIds)
        } else {
          await expect(opening).rejects.toMatchObject({ code: 'notAllowed' })
        }
      }
    }
  })

  it('is no parent', async () => {
    const guardian = await viewerOf('guardian')
    for (const squadId of squadIds) {
      await expect(loadSeasonBook(guardian, { squadId, query: {} })).rejects.toMatchObject({
        code: 'notAllowed',
      })
    }
  })

  it('is nobody for a squad that is not there', async () => {
    for (const squadId of ['nothing', 'af8897f0-1df0-4125-a1dd-82a1692ff73a']) {
      await expect(loadSeasonBook(headCoach, { squadId, query: {} })).rejects.toMatchObject({
        code: 'notFound',
      })
    }
  })
})
