import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { allDays } from '#common/time'
import { listAccounts } from '#data/accounts'
import { closeDatabase, type Database, openDatabase } from '#data/database'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { recordRegister } from '#data/register-lines'
import { listSessions, markWritten } from '#data/sessions'
import { recordTurns } from '#data/turn-events'
import { rebuildSession, rebuildSquad } from '#server/rebuild'
import { recordBook, richBook } from '../support/random-book'
import { aClub, enterSession, type TestClub } from '../support/test-club'
import { cloneTestDatabase, type TestDatabase, testDatabase } from '../support/test-database'
import { backUp, putBack } from '../support/whole-book'

let club: TestClub
let other: TestDatabase
let otherApp: Database

beforeAll(async () => {
  club = await aClub()
  await recordBook(club, richBook(40))
  await club.run((tx) => rebuildSquad(tx, { squadId: club.squadId }))
  other = await cloneTestDatabase()
  otherApp = openDatabase(other.appUrl, { connections: 2 })
}, 60_000)
afterAll(async () => {
  await closeDatabase(otherApp)
  await other.drop()
})

/** A practice of one turn, written with its sums in one transaction, as a page does it. */
async function writePractice(number: number): Promise<void> {
  const [one, two] = club.playerIds as [string, string]
  const sessionId = await enterSession(club, { title: `Written ${number}` })
  await club.run(async (tx) => {
    const line = { from: 0, to: 600, state: 'here' as const }
    await recordRegister(tx, {
      sessionId,
      lines: club.playerIds.map((playerId) => ({ playerId, ...line })),
      by: club.coach,
    })
    const stations = [{ attack: [one], defend: [two], keep: [] }]
    const turn = { id: newId(), start: 0, end: 90, themeId: null, stations }
    await recordTurns(tx, { sessionId, turns: [turn], by: club.coach })
    await markWritten(tx, { sessionIds: [sessionId], written: 'tapped', by: club.coach })
    await rebuildSession(tx, sessionId)
  })
}

describe('a backup while others write', () => {
  it('is one moment of the book: what was written by then and nothing after, and its books balance', async () => {
    let isDone = false
    let written = 0
    const writer = (async () => {
      while (!isDone) await writePractice(++written)
    })()
    const writtenBefore = written
    const file = await backUp(testDatabase().ownerUrl)
    isDone = true
    await writer
    await putBack(other.ownerUrl, file)

    const there = await inClub(
      club.club.id,
      (tx) => listSessions(tx, { squadId: club.squadId, ...allDays }),
      {
        database: otherApp,
      },
    )
    const numbers = there.flatMap(({ title }) => /^Written (\d+)$/.exec(title)?.[1] ?? []).map(Number)
    // One writer: what is there are the first so many, none left out.
    expect(numbers.sort((a, b) => a - b)).toEqual(numbers.map((_, index) => index + 1))
    expect(numbers.length).toBeGreaterThanOrEqual(writtenBefore)
    expect(numbers.length).toBeLessThan(written)

    // One that is entered and not written yet has no account.
    const accounts = async () => {
      const all = await inClub(
        club.club.id,
        (tx) => listAccounts(tx, { squadId: club.squadId, ...allDays }),
        { database: otherApp },
      )
      return all.filter(({ written }) => written !== 'notWritten')
    }
    const kept = await accounts()
    await inClub(club.club.id, (tx) => rebuildSquad(tx, { squadId: club.squadId }), { database: otherApp })
    expect(await accounts()).toEqual(kept)
  }, 60_000)
})
