import { describe, expect, it } from 'vitest'
import { listAudit } from '#data/audit'
import { setCountsGoals } from '#data/clubs'
import { listSessions } from '#data/sessions'
import { exportFile } from '#server/export-file'
import { checkFile, importFile } from '#server/import-file'
import { anImport, coachOf } from '../support/import-input'
import { aClub, type TestClub } from '../support/test-club'

const now = { now: new Date('2027-03-01T12:00:00.000Z') }
const allDays = { from: '0001-01-01', to: '9999-12-31' }
const text =
  'Date;Time;Type;Opponent;H/A;Result\n5.9.2026;10:30;Match;Marl Lane;H;3:1\n8.9.2026;17:30;Training;;;\n13.3.2027;11:00;Match;Sandholt;A;\n'
const take = (at: TestClub, file: string) =>
  importFile(coachOf(at), anImport(file, { squadId: at.squadId, what: 'calendar' }), now)
const calendar = (at: TestClub) =>
  at.run((tx) => exportFile(tx, 'calendar', { squadId: at.squadId, ...allDays }))
const sessions = (at: TestClub) => at.run((tx) => listSessions(tx, { squadId: at.squadId, ...allDays }))

describe('a calendar', () => {
  it('is looked at without a trace, taken in once, and is the same taken out and in again', async () => {
    const at = await aClub()
    await at.run((tx) => setCountsGoals(tx, true))
    const input = anImport(text, { squadId: at.squadId, what: 'calendar' })
    const looked = await checkFile(coachOf(at), input, now)
    expect(looked.ok && [looked.value.isReady, looked.value.summary]).toEqual([
      true,
      ['3 new practices and matches.'],
    ])
    expect(await sessions(at)).toEqual([])
    expect(await take(at, text)).toMatchObject({ ok: true })
    const entered = await sessions(at)
    expect(entered.map(({ day, kind, title, place, goals }) => [day, kind, title, place, goals])).toEqual([
      ['2026-09-05', 'match', 'Marl Lane', 'Home', { ours: 3, theirs: 1 }],
      ['2026-09-08', 'practice', '', '', null],
      ['2027-03-13', 'match', 'Sandholt', 'Away', null],
    ])
    expect(await take(at, text)).toMatchObject({ ok: false })
    const out = await calendar(at)
    const again = await checkFile(
      coachOf(at),
      anImport(out.text, { squadId: at.squadId, what: 'calendar' }),
      now,
    )
    expect(again.ok && again.value.summary).toEqual(['3 as the book has them.'])
    const changed = out.text.replace('2027-03-13,11:00', '2027-03-14,12:00')
    expect(await take(at, changed)).toMatchObject({ ok: true, value: expect.stringMatching(/1 changed/) })
    expect((await sessions(at)).at(-1)).toMatchObject({ day: '2027-03-14', startsAt: '12:00' })
    expect(await sessions(at)).toHaveLength(3)
    const deeds = await at.run((tx) => listAudit(tx, { limit: 9 }))
    expect(deeds.map(({ action }) => action)).toEqual(['importCalendar', 'importCalendar'])
  })

  it('writes nothing at all while one row is wrong', async () => {
    const at = await aClub()
    expect(await take(at, `${text}14.3.2031;;Match;Thorn Green;;\n`)).toMatchObject({ ok: false })
    expect(await sessions(at)).toEqual([])
  })

  it('leaves results out where goals are not counted, on the way out too', async () => {
    const at = await aClub()
    expect(await take(at, text)).toMatchObject({ ok: true })
    expect((await sessions(at)).map(({ goals }) => goals)).toEqual([null, null, null])
    expect((await calendar(at)).text).not.toMatch(/goals/i)
  })
})
