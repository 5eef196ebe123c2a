import { beforeAll, describe, expect, it } from 'vitest'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import { listMemberships } from '#data/memberships'
import { listPeople } from '#data/people'
import { listSessions } from '#data/sessions'
import { listSquads } from '#data/squads'
import { roles } from '#exposure/column'
import { loadSeasonBook } from '#server/book-views'
import { findViewer } from '#server/find-viewer'
import { loadPlayerBook } from '#server/player-views'
import { loadToday } from '#server/today-views'
import { clubId } from '../../seeds/club'
import { loadDemoBook } from '../support/demo-book'

let headCoach: Viewer
let guardian: Viewer
let squadIds: readonly string[]

async function viewerOf(role: Viewer['role']): Promise<Viewer> {
  const person = (await inClub(clubId, listPeople)).find((one) => one.role === role)
  const viewer = person && (await findViewer({ clubId, personId: person.id }))
  if (!viewer) throw new Error(`the demo club has no ${role}`)
  return viewer
}

beforeAll(async () => {
  await loadDemoBook()
  headCoach = await viewerOf('headCoach')
  guardian = await viewerOf('guardian')
  squadIds = (await inClub(clubId, listSquads)).map(({ id }) => id)
}, 60_000)

describe('a player’s page', () => {
  it('has the same line as the season book, for every member of every squad', async () => {
    for (const squadId of squadIds) {
      const book = await loadSeasonBook(headCoach, { squadId, query: {} })
      for (const line of book.members) {
        const { row } = await loadPlayerBook(headCoach, { squadId, playerId: line.player.id, query: {} })
        expect(row?.player.name).toBe(line.player.name)
        expect(row?.sessionsThere).toBe(line.sessionsThere)
        expect(row?.isMostlyAsPlanned).toBe(line.isMostlyAsPlanned)
        expect(row?.openGoal === null).toBe(line.openGoal === null)
        for (const [index, { figure }] of line.figures.entries()) {
          const own = row?.figures[index]?.figure
          expect(own?.seconds).toBeCloseTo(figure.seconds, 6)
          expect(own?.gapSeconds).toBeCloseTo(figure.gapSeconds, 6)
          expect(own?.status).toBe(figure.status)
          expect(own?.cause?.missed).toBeCloseTo(figure.cause?.missed ?? Number.NaN, 6)
        }
      }
    }
  })

  it('has weeks that add up to the line, and running differences that end on it', async () => {
    const [squadId = ''] = squadIds
    const { members } = await loadSeasonBook(headCoach, { squadId, query: {} })
    const playerId = members[0]?.player.id ?? ''
    const { row, weeks, gaps } = await loadPlayerBook(headCoach, { squadId, playerId, query: {} })
    for (const [index, role] of roles.entries()) {
      const figure = row?.figures[index]?.figure
      expect(weeks.reduce((sum, week) => sum + week.seconds[role], 0)).toBeCloseTo(
        figure?.seconds ?? Number.NaN,
        6,
      )
      expect(gaps[index]?.points.at(-1)?.gapSeconds).toBeCloseTo(figure?.gapSeconds ?? Number.NaN, 6)
    }
  })

  it('leaves out what was held before the player joined', async () => {
    for (const squadId of squadIds) {
      const memberships = await inClub(clubId, (tx) => listMemberships(tx, squadId))
      const late = memberships.filter(({ firstDay }) => firstDay >= '2026-01-01')
      for (const { playerId, firstDay } of late) {
        const { attendance } = await loadPlayerBook(headCoach, { squadId, playerId, query: {} })
        expect(attendance.length).toBeGreaterThan(0)
        expect(attendance.every(({ day }) => day >= firstDay)).toBe(true)
      }
    }
  })

  it('is not there in a squad the player does not belong to, nor for its parent', async () => {
    const [first = '', second = ''] = squadIds
    const playerId = (await inClub(clubId, (tx) => listMemberships(tx, first)))[0]?.playerId ?? ''
    const open = (viewer: Viewer, squadId: string) => loadPlayerBook(viewer, { squadId, playerId, query: {} })
    await expect(open(headCoach, second)).rejects.toMatchObject({ code: 'notFound' })
    const [childId = ''] = guardian.playerIds
    await expect(
      loadPlayerBook(guardian, { squadId: first, playerId: childId, query: {} }),
    ).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })
})

describe('today', () => {
  it('shows at most three things to do, the next session, and every session held and not written', async () => {
    for (const squadId of squadIds) {
      const book = await loadToday(headCoach, { squadId })
      expect(book.cures.length).toBeLessThanOrEqual(3)
      expect(book.next === null || book.next.day >= book.today).toBe(true)
      const sessions = await inClub(clubId, (tx) =>
        listSessions(tx, { squadId, from: '2025-01-01', to: '2027-01-01', withCancelled: false }),
      )
      const missing = sessions.filter(({ day, written }) => day < book.today && written === 'notWritten')
      expect(new Set(book.toWrite.map(({ id }) => id))).toEqual(new Set(missing.map(({ id }) => id)))
    }
  })

  it('names players in the order of their names, whoever is furthest behind', async () => {
    for (const squadId of squadIds) {
      const { cures, players } = await loadToday(headCoach, { squadId })
      const byName = (ids: readonly string[]) => players.map(({ id }) => id).filter((id) => ids.includes(id))
      expect(cures.some(({ cure }) => cure.playerIds.length > 1)).toBe(true)
      for (const { cure, flags } of cures) {
        expect(cure.playerIds).toEqual(byName(cure.playerIds))
        const flagged = [...new Set(flags.map(({ playerId }) => playerId))]
        expect(flagged).toEqual(byName(flagged))
      }
    }
  })

  it('is no parent’s', async () => {
    await expect(loadToday(guardian, { squadId: squadIds[0] ?? '' })).rejects.toMatchObject({
      code: 'notAllowed',
    })
  })
})
