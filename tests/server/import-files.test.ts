import { describe, expect, it } from 'vitest'
import { listAccounts } from '#data/accounts'
import { listAudit } from '#data/audit'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listRegister } from '#data/register-lines'
import { listSessions } from '#data/sessions'
import { exportFile } from '#server/export-file'
import { checkFile as check, importFile as importNow } from '#server/import-file'
import { anImport, coachOf, emptySquad, headCoachOf } from '../support/import-input'
import { aClub, type TestClub } from '../support/test-club'

const now = new Date('2027-03-01T12:00:00.000Z')
const checkFile = (...of: [Parameters<typeof check>[0], Parameters<typeof check>[1]]) => check(...of, { now })
const importFile = (...of: [Parameters<typeof check>[0], Parameters<typeof check>[1]]) =>
  importNow(...of, { now })
const allDays = { from: '0001-01-01', to: '9999-12-31' }
const rosterText =
  "Name;Shirt;From;To\nO'Brien-Łukasz, Zoë;7;1.9.2026;\nAsh, Ann;8;2.9.2026;20.12.2026\nAsh, Ann;9;2.9.2026;\nAsh, Ann;9;2.9.2026;\n\n;;;\n"

async function stateOf(at: TestClub, squadId: string) {
  return at.run(async (tx) => ({
    players: (await listSquadPlayers(tx, squadId)).map(({ name }) => name),
    memberships: (await listMemberships(tx, squadId)).map(
      ({ firstDay, lastDay }) => `${firstDay} ${lastDay}`,
    ),
    sessions: (await listSessions(tx, { squadId, ...allDays })).map(
      ({ day, kind, written }) => `${day} ${kind} ${written}`,
    ),
    audit: (await listAudit(tx, { limit: 10 })).map(({ action }) => action),
  }))
}

describe('a roster', () => {
  it('is looked at without writing anything, then imported as it was shown, with its audit row', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const input = anImport(rosterText, { squadId, what: 'roster' })
    const looked = await checkFile(headCoachOf(at), input)
    expect(looked.ok && [looked.value.isReady, looked.value.summary]).toEqual([
      true,
      ['3 new players.', '1 doubled row.'],
    ])
    expect((await stateOf(at, squadId)).players).toEqual([])

    const done = await importFile(headCoachOf(at), input)
    expect(done).toEqual({ ok: true, value: 'Imported: 3 new players, 0 changed.' })
    const state = await stateOf(at, squadId)
    expect(state.players).toEqual(['Ann Ash', 'Ann Ash', "Zoë O'Brien-Łukasz"])
    expect(state.memberships).toEqual(['2026-09-01 null', '2026-09-02 2026-12-20', '2026-09-02 null'].sort())
    expect(state.audit).toEqual(['importRoster'])
  })

  it('writes nothing while a question is open, and what was answered afterwards', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    await importFile(headCoachOf(at), anImport(rosterText, { squadId, what: 'roster' }))
    const again = { squadId, what: 'roster' as const }
    const twice = 'Name\nAnn Ash\nCy Cole'
    const refused = await importFile(headCoachOf(at), anImport(twice, again))
    expect(refused.ok).toBe(false)
    expect((await stateOf(at, squadId)).players).toHaveLength(3)
    const done = await importFile(headCoachOf(at), anImport(twice, { ...again, answers: { 2: 'leaveOut' } }))
    expect(done.ok).toBe(true)
    expect((await stateOf(at, squadId)).players).toContain('Cy Cole')
  })

  it('asks a head coach about a name of another squad, and a coach who may not see that squad is told nothing of it', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const input = anImport('Name\nAda Fenn', { squadId, what: 'roster' })
    const toneFor = async (viewer: ReturnType<typeof coachOf>) => {
      const looked = await checkFile(viewer, input)
      return looked.ok && looked.value.rows[0]?.saying.tone
    }
    expect(await toneFor(headCoachOf(at))).toBe('ask')
    expect(await toneFor(coachOf(at, [squadId]))).toBe('new')
  })

  it('comes out as it went in, and importing that again changes nothing', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const names = '-Ann\n=1+1\n"Ash, Bo"\n@x\n"a ""b"" c"\nשרה כהן\n👩🏽 Zoë'
    await importFile(
      headCoachOf(at),
      anImport(`Player\n${names}`, { squadId, what: 'roster', nameOrder: 'asWritten' }),
    )
    const file = await at.run((tx) => exportFile(tx, 'roster', { squadId, ...allDays }))
    expect((await stateOf(at, squadId)).players).toEqual(
      expect.arrayContaining(['-Ann', '=1+1', 'Ash, Bo', '@x', 'a "b" c']),
    )
    const looked = await checkFile(headCoachOf(at), anImport(file.text, { squadId, what: 'roster' }))
    expect(looked.ok && looked.value.rows.map(({ saying }) => saying.tone)).toEqual(Array(7).fill('same'))
  })
})

describe('an attendance list', () => {
  const text = 'Name,1/9/2026,15/9/2026,15/9/2026 match\nAda Fenn,x,late,x\nBo Larch,,x,\nStranger,x,x,x\n'

  it('makes sessions with a register and no turns: attendance counts, nothing is drawn as zero', async () => {
    const at = await aClub()
    const input = anImport(text, { squadId: at.squadId, what: 'attendance', answers: { 4: 'guest' } })
    const looked = await checkFile(headCoachOf(at), input)
    expect(looked.ok && looked.value.isReady).toBe(true)
    expect((await importFile(headCoachOf(at), input)).ok).toBe(true)
    const state = await stateOf(at, at.squadId)
    expect([...state.sessions].sort()).toEqual(
      [
        '2026-09-01 practice notWritten',
        '2026-09-15 match notWritten',
        '2026-09-15 practice notWritten',
      ].sort(),
    )
    expect(state.players).toContain('Stranger')
    const accounts = await at.run((tx) => listAccounts(tx, { squadId: at.squadId, ...allDays }))
    expect(accounts.map(({ lines }) => lines.length)).toEqual([0, 0, 0])
    const first = accounts[0]?.presences.map(({ attendance, isMember }) => `${attendance} ${isMember}`).sort()
    expect(first).toEqual(
      ['away true', 'away true', 'away true', 'away true', 'here false', 'here true'].sort(),
    )
  })
})

describe('who may import', () => {
  it('is a coach into its own squads only', async () => {
    const at = await aClub()
    const squadId = await emptySquad(at)
    const input = anImport('Name\nAnn', { squadId, what: 'roster' })
    await expect(importFile(coachOf(at), input)).rejects.toMatchObject({ code: 'notAllowed' })
    await expect(checkFile(coachOf(at), input)).rejects.toMatchObject({ code: 'notAllowed' })
    for (const role of ['guardian', 'helper'] as const) {
      await expect(importFile({ ...headCoachOf(at), role }, input)).rejects.toMatchObject({
        code: 'notAllowed',
      })
    }
    expect((await importFile(coachOf(at, [squadId]), input)).ok).toBe(true)
  })

  it('is nobody into a squad of another club', async () => {
    const [at, other] = [await aClub(), await aClub()]
    const input = anImport('Name\nAnn', { squadId: other.squadId, what: 'roster' })
    await expect(importFile(headCoachOf(at), input)).rejects.toMatchObject({ code: 'notFound' })
  })
})

describe('bad files', () => {
  it.each([
    ['larger than ten megabytes', new Uint8Array(10 * 1024 * 1024 + 1).fill(97), /10 MB/],
    ['empty', new Uint8Array(), /empty/],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0, 0]), /not a text/],
  ])('are refused in a sentence: %s', async (_what, bytes, sentence) => {
    const at = await aClub()
    const result = await checkFile(headCoachOf(at), anImport(bytes, { squadId: at.squadId, what: 'roster' }))
    expect(result.ok ? [] : result.reasons.map(({ message }) => message)).toEqual([
      expect.stringMatching(sentence),
    ])
  })
})

it('five thousand rows of attendance are understood, doubled ones once', async () => {
  const at = await aClub({ players: 8 })
  const days = Array.from({ length: 60 }, (_, n) =>
    new Date(Date.UTC(2026, 7, 1) + n * 86_400_000).toISOString().slice(0, 10),
  )
  const players = await at.run((tx) => listSquadPlayers(tx, at.squadId))
  const lines = days.flatMap((day) => players.map(({ name }) => `${day},${name},here`))
  const times = 11
  const text = `Date,Player,Attendance\n${Array(times).fill(lines.join('\n')).join('\n')}`
  const looked = await checkFile(headCoachOf(at), anImport(text, { squadId: at.squadId, what: 'attendance' }))
  if (!looked.ok) throw new Error(JSON.stringify(looked.reasons))
  const { sessions, rows, summary, isReady } = looked.value
  expect([sessions.length, rows.length, isReady]).toEqual([60, times * 480, true])
  expect(summary).toContain(`${(times - 1) * 480} doubled rows.`)
  expect(sessions.every(({ saying }) => saying.says.includes('8 there, 0 away'))).toBe(true)
}, 60_000)

it('a register is not written twice by two who import at once', async () => {
  const at = await aClub()
  const squadId = await emptySquad(at)
  const input = () => anImport('Name,Code\nAnn,a1', { squadId, what: 'roster' })
  const both = await Promise.all([importFile(headCoachOf(at), input()), importFile(headCoachOf(at), input())])
  expect(both.filter(({ ok }) => ok)).toHaveLength(1)
  expect((await stateOf(at, squadId)).players).toEqual(['Ann'])
  expect(await at.run((tx) => listRegister(tx, squadId))).toEqual([])
})

describe('attendance', () => {
  it('comes out as it went in, to the second, and importing that again changes nothing', async () => {
    const at = await aClub()
    const text =
      'Name,1/9/2026,15/9/2026,15/9/2026 cup match\nAda Fenn,x,late 7,x\nBo Larch,inj,x,\nCy Marrow,,x,x\n'
    await importFile(
      headCoachOf(at),
      anImport(text, { squadId: at.squadId, what: 'attendance', lengthMinutes: 75 }),
    )
    const file = await at.run((tx) => exportFile(tx, 'attendance', { squadId: at.squadId, ...allDays }))
    expect(file.text).toContain('Ada Fenn')
    expect(file.text).toMatch(/,here,420,4500\r\n/)
    const looked = await checkFile(
      headCoachOf(at),
      anImport(file.text, { squadId: at.squadId, what: 'attendance' }),
    )
    expect(looked.ok && looked.value.sessions.map(({ saying }) => saying.tone)).toEqual([
      'same',
      'same',
      'same',
    ])

    const squadId = await emptySquad(at)
    const moved = await importFile(
      headCoachOf(at),
      anImport(file.text, {
        squadId,
        what: 'attendance',
        answers: await everyoneIsKnown(at, file.text, squadId),
      }),
    )
    expect(moved).toMatchObject({ ok: true })
    const again = await at.run((tx) => exportFile(tx, 'attendance', { squadId, ...allDays }))
    const registers = (csv: string) =>
      csv
        .split('\r\n')
        .flatMap((line) => (/,(?:away|Attendance),/.test(line) ? [] : [line.split(',').slice(7).join()]))
    expect(registers(again.text)).toEqual(registers(file.text))
  })
})

/** Answers for a squad that shares its players with another: each is the one of that name. */
async function everyoneIsKnown(at: TestClub, text: string, squadId: string): Promise<Record<string, string>> {
  const looked = await checkFile(headCoachOf(at), anImport(text, { squadId, what: 'attendance' }))
  const rows = looked.ok ? looked.value.rows : []
  return Object.fromEntries(
    rows.flatMap(({ line, saying }) =>
      saying.tone === 'ask' ? [[line, saying.choices[0]?.value ?? '']] : [],
    ),
  )
}
