import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decodeText } from '#exchange/csv/decode-text'
import { readRows } from '#exchange/csv/read-rows'
import { readRoster } from '#exchange/roster/read-roster'
import { writeRoster } from '#exchange/roster/write-roster'
import { noSettings } from '#exchange/table/file-settings'
import { tidyName } from '#exchange/table/name-form'
import { rosterOf } from '../support/read-text'

const entries = (text: string) =>
  rosterOf(text).rows.flatMap(({ result }) => (result.kind === 'understood' ? [result.entry] : []))
const names = (text: string) => entries(text).map((entry) => entry.name)

describe('a roster as people have it', () => {
  it.each([
    ['a header in any order', 'Shirt,Name,Joined\n7,Ann Ash,2026-09-01', ['Ann Ash']],
    ['first and last name apart', 'Vorname;Nachname;Nr.\nAnn;Ash;7', ['Ann Ash']],
    ['last name first', 'Surname\tFirst name\nAsh\tAnn', ['Ann Ash']],
    ['a column Name beside one First name', 'Name;Vorname\nAsh;Ann', ['Ann Ash']],
    ['“Last, First”', 'Name;No\n"Ash, Ann";7\n"Birch, Bo";8', ['Ann Ash', 'Bo Birch']],
    ['“Last, First” without quotes, alone on the line', 'Ash, Ann\nBirch, Bo', ['Ann Ash', 'Bo Birch']],
    ['no header', 'Ann Ash,7\nBo Birch,8', ['Ann Ash', 'Bo Birch']],
    ['no header, two columns of words', 'Ann;Ash\nBo;Birch', ['Ann Ash', 'Bo Birch']],
    ['only names', 'Ann Ash\nBo Birch\n', ['Ann Ash', 'Bo Birch']],
    [
      'a title above the header',
      'Under-tens 2026/27,,\n,,\nName,Shirt,From\nAnn Ash,7,2026-09-01',
      ['Ann Ash'],
    ],
    ['a title and no header', 'Under-tens 2026/27;\nAnn Ash;7\nBo Birch;8', ['Ann Ash', 'Bo Birch']],
    ['trailing empty rows and a bare number', 'No,Name\n1,Ann Ash\n2,\n,\n,,\n', ['Ann Ash']],
    ['a byte order mark', '\uFEFFName,No\nAnn Ash,7', ['Ann Ash']],
    ['capitals and punctuation in the header', 'PLAYER NAME:;SHIRT NO.\nAnn Ash;7', ['Ann Ash']],
    [
      'names as they are',
      "Name\nO'Brien-Łukasz, Zoë\nd’Aubigné, Anaïs\n",
      ["Zoë O'Brien-Łukasz", 'Anaïs d’Aubigné'],
    ],
    ['a line break in a quoted name', 'Name;No\n"Ann\r\nAsh";7', ['Ann Ash']],
  ])('is understood with %s', (_what, text, expected) => {
    expect(names(text)).toEqual(expected)
  })

  it('says what each cell means', () => {
    const text =
      'Player;Code;Shirt;May keep goal;Wants to keep goal;Member from;Member to\nAnn;a1;7;no;yes;1.9.2026;31.12.26'
    expect(entries(text)).toEqual([
      {
        name: 'Ann',
        code: 'a1',
        shirt: '7',
        keeps: false,
        wantsToKeep: true,
        firstDay: '2026-09-01',
        lastDay: '2026-12-31',
      },
    ])
  })

  it('leaves a column alone that could mean several things, until a person says which', () => {
    const text = 'Name,Goalkeeper\nAnn,no'
    expect(entries(text)[0]).toMatchObject({ keeps: null, wantsToKeep: null })
    const said = rosterOf(text, { columns: ['name', 'wantsToKeep'] }).rows[0]
    expect(said?.result).toMatchObject({ entry: { wantsToKeep: false } })
  })

  it('asks for the order of days and months when no date settles it, and obeys the answer', () => {
    const text = 'Name,From\nAnn,3/9/2026\nBo,4/10/2026'
    expect(rosterOf(text).dateReading.kind).toBe('open')
    const said = rosterOf(text, { dateOrder: 'mdy' })
    expect(said.rows[0]?.result).toMatchObject({ entry: { firstDay: '2026-03-09' } })
  })

  it.each([
    ['a day that is none', 'Name,From\nAnn,31/11/2026\nBo,30/11/2026', /31\/11\/2026.*no day/],
    ['neither yes nor no', 'Name,Keeps goal\nAnn,perhaps', /perhaps.*yes nor no/],
    ['a last day before the first', 'Name,From,To\nAnn,2026-09-02,2026-09-01', /before the first day/],
    ['a name that is too long', `Name,No\n${'a'.repeat(81)},7`, /81 characters/],
    ['dates without a name', 'Name,From\n,2026-09-01', /no name/],
  ])('has a problem in its row for %s, and nowhere else', (_what, text, sentence) => {
    const problems = rosterOf(text).rows.flatMap(({ result }) =>
      result.kind === 'problem' ? result.problems : [],
    )
    expect(problems).toEqual([expect.stringMatching(sentence)])
  })

  it('can be told to have no header, and other columns', () => {
    const reading = rosterOf('Name,First\nAnn,Ash', { headerLine: 0, columns: ['firstName', 'lastName'] })
    expect(reading.rows.map(({ result }) => result.kind === 'understood' && result.entry.name)).toEqual([
      'Name First',
      'Ann Ash',
    ])
  })

  it('passes over a mapping that belongs to another number of columns', () => {
    expect(rosterOf('Name,No\nAnn,7', { columns: ['name'] }).columns).toEqual(['name', 'shirt'])
  })
})

describe('a roster that was written here', () => {
  const day = fc
    .integer({ min: 0, max: 300 })
    .map((n) => new Date(Date.UTC(2026, 7, 1 + n)).toISOString().slice(0, 10))
  const name = fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 30 })
    .map(tidyName)
    .filter((text) => /[\p{L}\p{N}\p{S}]/u.test(text))
  const hostile = fc.constantFrom(
    '-Ann',
    '=1+1',
    "'=x",
    '@bo',
    '"Quo"te',
    'Ash, Ann',
    'a;b',
    'שרה כהן',
    'محمد',
    '👩🏽‍🦰 Zoë',
    'Name',
    "O'Brien-Łukasz",
    '＝SUM',
  )
  const line = fc.record({
    name: fc.oneof(hostile, name),
    code: fc.option(
      fc
        .string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 8 })
        .map((c) => c.trim().replace(/\s+/g, ' '))
        .filter((c) => c !== ''),
    ),
    keeps: fc.boolean(),
    wantsToKeep: fc.boolean(),
    firstDay: day,
    lastDay: fc.option(day),
  })

  it('is understood the same, whatever the names', () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 20 }), (drawn) => {
        const lines = drawn.map((l) => ({
          ...l,
          lastDay: l.lastDay !== null && l.lastDay < l.firstDay ? null : l.lastDay,
        }))
        const bytes = new TextEncoder().encode(writeRoster(lines))
        const text = decodeText(bytes, null)
        const rows = text.ok ? readRows(text.value.text, null) : text
        if (!rows.ok) throw new Error(JSON.stringify(rows.reasons))
        const read = readRoster(rows.value.rows, noSettings, null)
        expect(read.rows.map(({ result }) => result)).toEqual(
          lines.map((l) => ({ kind: 'understood', entry: { ...l, shirt: null } })),
        )
      }),
      { numRuns: 200 },
    )
  }, 30_000)

  it('keeps a thousand names of any letters', () => {
    const lines = fc.sample(name, { numRuns: 1000, seed: 7 }).map((text) => ({
      name: text,
      code: null,
      keeps: true,
      wantsToKeep: false,
      firstDay: '2026-09-01',
      lastDay: null,
    }))
    expect(names(writeRoster(lines))).toEqual(lines.map((l) => l.name))
  })
})
