import { describe, expect, it } from 'vitest'
import { listKeepsChanges } from '#data/keeps-changes'
import { getPlayer } from '#data/players'
import { changeKeepsOf } from '#server/change-player'
import { exportFile } from '#server/export-file'
import { importFile } from '#server/import-file'
import { anImport, headCoachOf } from '../support/import-input'
import { aClub, type TestClub } from '../support/test-club'

const now = new Date('2027-03-01T12:00:00.000Z')

/** A log with one practice a day, each with the first two players of the club there. */
function aLog(at: TestClub, days: readonly string[], keeps: boolean) {
  const [ada, bo] = at.playerIds
  return {
    format: 'turnbook/season-log@1',
    players: [
      { id: ada, keeps },
      { id: bo, keeps: true },
    ],
    practices: days.map((date) => ({
      id: date,
      date,
      register: [ada, bo].map((player) => ({ player, from: 0, to: 600 })),
      turns: [{ start: 0, end: 100, stations: [{ attack: [ada], keep: [bo] }] }],
    })),
  }
}

const take = (at: TestClub, file: string, what: 'roster' | 'log') =>
  importFile(headCoachOf(at), anImport(file, { squadId: at.squadId, what }), { now })
const takeLog = (at: TestClub, days: readonly string[], keeps: boolean) =>
  take(at, JSON.stringify(aLog(at, days, keeps)), 'log')
const fromFebruaryOn = (at: TestClub) =>
  changeKeepsOf(
    headCoachOf(at),
    { squadId: at.squadId, playerId: at.playerIds[0] as string, keeps: false, day: '2027-02-01' },
    now,
  )

describe('who may be put in goal, in files', () => {
  it('changes by a roster from the day of its import on', async () => {
    const at = await aClub()
    const done = await take(at, 'Name,May keep goal\nAda Fenn,no\nBo Larch,yes\n', 'roster')
    expect(done).toEqual({ ok: true, value: 'Imported: 0 new players, 1 changed.' })
    const [ada] = at.playerIds
    expect(await at.run((tx) => listKeepsChanges(tx, at.playerIds))).toEqual([
      { playerId: ada, day: '2027-03-01', keeps: false },
    ])
    expect((await at.run((tx) => getPlayer(tx, ada as string))).keeps).toBe(false)
  })

  it('goes out in a season log as it was in the last session of its days', async () => {
    const at = await aClub()
    await takeLog(at, ['2026-09-01', '2027-02-10'], true)
    await fromFebruaryOn(at)
    const wordOf = async (days: { from: string; to: string }) => {
      const { text } = await at.run((tx) => exportFile(tx, 'log', { squadId: at.squadId, ...days }))
      const { players } = JSON.parse(text) as { players: { id: string; name: string; keeps: boolean }[] }
      return players.find(({ name }) => name === 'Ada Fenn')?.keeps
    }
    expect(await wordOf({ from: '2026-08-01', to: '2027-06-30' })).toBe(false)
    expect(await wordOf({ from: '2026-08-01', to: '2027-01-31' })).toBe(true)
    // Changed within these days, and after the last session of them.
    expect(await wordOf({ from: '2026-08-01', to: '2027-02-09' })).toBe(true)
  })

  it('comes in with a season log as of the last day of the log, or is refused with the word that would be right', async () => {
    const at = await aClub()
    await fromFebruaryOn(at)
    expect(await takeLog(at, ['2026-09-01', '2026-12-01'], true)).toMatchObject({ ok: true })
    const refused = await takeLog(at, ['2026-09-02', '2027-02-10'], true)
    expect(refused.ok ? [] : refused.reasons).toEqual([
      {
        path: 'players[0].keeps',
        message:
          'is true, and the book says false of Ada Fenn; false would be right, or another word in the book first',
      },
    ])
    expect(await takeLog(at, ['2026-09-02', '2027-02-10'], false)).toMatchObject({ ok: true })
  })
})
