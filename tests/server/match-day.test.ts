import { describe, expect, it } from 'vitest'
import { newId } from '#data/ids'
import { recordMatchFormats, setFormatOfSquad } from '#data/match-formats'
import { recordSpells } from '#data/match-spells'
import { recordRegister } from '#data/register-lines'
import { markWritten } from '#data/sessions'
import { plainFormat } from '#lineup/draft/plain-format'
import { loadMatchBook } from '#server/match-book-views'
import { rebuildSession } from '#server/rebuild'
import { matchColumns } from '#ui/matches/match-columns'
import { emptySquad, headCoachOf } from '../support/import-input'
import { aClub, enterSession, type TestClub } from '../support/test-club'

const day = '2026-09-12'
const now = new Date('2026-09-20T12:00:00Z')

/** A short game of fifteen minutes; who is here is on throughout, but for who is named. */
async function shortGame(
  at: TestClub,
  of: { squadId: string; startsAt: string; here: readonly string[]; off?: string },
) {
  const sessionId = await enterSession(at, {
    squadId: of.squadId,
    kind: 'match',
    day,
    startsAt: of.startsAt,
    periods: [{ start: 0, end: 900 }],
  })
  const by = at.coach
  await at.run(async (tx) => {
    const lines = of.here.map((playerId) => ({ playerId, from: 0, to: 900, state: 'here' as const }))
    await recordRegister(tx, { sessionId, lines, by })
    const spells = of.here
      .filter((playerId) => playerId !== of.off)
      .map((playerId) => ({ playerId, line: 'forward' as const, start: 0, end: 900 }))
    await recordSpells(tx, { matches: [{ sessionId, spells }], by })
    await markWritten(tx, { sessionIds: [sessionId], written: 'typedLater', by })
    await rebuildSession(tx, sessionId)
  })
  return sessionId
}

describe('a day of several short games', () => {
  it('adds up over the games and over squads, and is held against the limit of a day', async () => {
    const at = await aClub({ players: 3 })
    const [ada = '', bo = '', cy = ''] = at.playerIds
    const herons = await emptySquad(at)
    await shortGame(at, { squadId: at.squadId, startsAt: '10:00', here: [ada, bo, cy], off: cy })
    await shortGame(at, { squadId: at.squadId, startsAt: '10:30', here: [ada, bo, cy], off: bo })
    // Ada helps out with the others.
    await shortGame(at, { squadId: herons, startsAt: '11:00', here: [ada] })
    await at.run(async (tx) => {
      const id = newId()
      const format = { ...plainFormat, isShortGames: true, mostSecondsADay: 2400 }
      await recordMatchFormats(tx, [{ id, format, takenFrom: null }])
      await setFormatOfSquad(tx, { squadId: at.squadId, formatId: id })
    })
    const book = await loadMatchBook(headCoachOf(at), { squadId: at.squadId, query: {}, now })
    const minutes = book.members.map(({ played, matchesThere, starts }) => [
      played.seconds,
      matchesThere,
      starts,
    ])
    expect(minutes).toEqual([
      [1800, 2, 2],
      [900, 2, 1],
      [900, 2, 1],
    ])
    expect(matchColumns(book.matches).map((column) => column.of)).toEqual(['match', 'match', 'day'])
    expect(book.longDays).toEqual([{ playerId: ada, day, matches: 3, playedSeconds: 2700 }])
    // Half of each game is promised: who was off in one had less.
    expect(book.below.map(({ figure }) => figure.playerId)).toEqual([cy, bo])
  })
})
