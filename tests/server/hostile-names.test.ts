import fc from 'fast-check'
import { describe, expect, it, vi } from 'vitest'
import { newId } from '#data/ids'
import { listSquadPlayers } from '#data/players'
import { recordSquads } from '#data/squads'
import { parseRecords } from '#exchange/csv/parse-records'
import { writeCsv } from '#exchange/csv/write-csv'
import { exportFile } from '#server/export-file'
import { importFile } from '#server/import-file'
import { addPlayer } from '#server/player-actions'
import { anImport, headCoachOf } from '../support/import-input'
import { sent } from '../support/spoiled-door'
import { aClubForWriting, askAs, idle } from '../support/writing-club'

// Next's own request and cache do not exist outside of Next; everything of ours is the real thing.
vi.mock('next/headers', () => import('../support/next-request'))
vi.mock('next/cache', () => ({ revalidatePath: () => {} }))

const at = aClubForWriting()

/** Pieces of the kinds that break programs; kinds after the Big List of Naughty Strings, from memory, texts our own. */
const pieces = [
  ...[
    "' OR 1=1 --",
    '"; DROP TABLE "Player"; --',
    '$$',
    "\\'",
    '%s%n%x',
    '%00',
    '\u0024{7*7}',
    '{{7*7}}',
    '<%= 7 %>',
  ],
  ...[
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    'javascript:alert(1)',
    '&lt;',
    '&#0;',
    '<!--',
  ],
  ...['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("http://x.example")', '＝1', "'=1", '\t=1', '|calc'],
  ...['../../etc/passwd', '..\\..\\x', 'CON', 'file:///x', '/dev/null', '~', '$(id)', '`id`', '; ls'],
  ...['__proto__', 'constructor', 'toString', 'null', 'undefined', 'NaN', 'true', '[object Object]', '1e309'],
  ...[
    '\u202Eevil',
    '\u2066x\u2069',
    '\u200B',
    '\u200D',
    '\uFEFF',
    '\u00AD',
    '\u2028',
    '\u2029',
    '\u0085',
    '\u00A0',
  ],
  ...[
    'e\u0301\u0301\u0301\u0301',
    'Z\u0335\u0321a\u0338\u0300',
    '\u0300',
    'ﷺ',
    '𝔘𝔫𝔦',
    'Ⓐ',
    'ﬀ',
    'İı',
    'ß',
    'ǆ',
  ],
  ...['👩‍👩‍👧‍👦', '🏳️‍🌈', '👍🏽', '🇬🇧', '田中', 'Ж', 'ا', 'ש', 'ก', '𐍈', '\u{10FFFF}', '\uD800', '\uDC00x'],
  ...[
    '\u0000',
    '\u0001',
    '\u001B[31m',
    '\u007F',
    '\r\n',
    '\n',
    '\v',
    '\f',
    '"',
    '""',
    "''",
    ' ',
    '   ',
    'a'.repeat(90),
  ],
] as const

const hostile = fc
  .array(fc.oneof(fc.constantFrom(...pieces), fc.string({ unit: 'binary', maxLength: 6 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((parts) => parts.join(''))
const names = fc.sample(hostile, { numRuns: 1000, seed: 20261126 })

/** Without what nobody would miss: spaces, controls, signs that only switch direction, how accents are composed, halves of a character that no file can hold. */
const seen = (text: string) =>
  Buffer.from(text)
    .toString()
    .normalize('NFC')
    .replace(/[\p{Cc}\s\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/gu, '')

async function namesOf(squadId: string): Promise<readonly string[]> {
  return (await at.club.run((tx) => listSquadPlayers(tx, squadId))).map(({ name }) => name)
}

describe('a thousand hostile names', () => {
  it('in files are kept as they are, or the whole file is refused in words', async () => {
    const viewer = headCoachOf(at.club)
    const [kept, refused] = [[] as string[], [] as string[]]
    for (let from = 0; from < names.length; from += 5) {
      const some = names.slice(from, from + 5)
      const squadId = await squadMore(from)
      const text = writeCsv([['Name'], ...some.map((name) => [name])])
      const done = await importFile(viewer, anImport(text, { squadId, what: 'roster', separator: ',' }))
      const stored = await namesOf(squadId)
      if (done.ok) kept.push(...stored)
      else {
        refused.push(...some)
        expect(stored).toEqual([])
        for (const { message } of done.reasons) expect(message).toMatch(/\p{L}{2,}.*\p{L}{2,}/u)
      }
      const given = new Set(some.map(seen))
      expect(
        stored.filter((name) => !given.has(seen(name)) && !some.some((one) => one.includes(','))),
      ).toEqual([])
    }
    expect([kept.length > 100, refused.length > 100]).toEqual([true, true])
  }, 60_000)

  it('typed into the form are kept as they are, or refused in words', async () => {
    askAs(at.club, 'coach')
    const { squadId } = at.club
    let count = (await namesOf(squadId)).length
    for (const name of names.filter((_, index) => index % 20 === 0)) {
      const input = { squadId, name, keeps: 'on', firstDay: '2026-09-15' }
      const answer = await addPlayer(idle, sent(input, 'fields')).catch((error: unknown) => error)
      expect(JSON.stringify(answer)).not.toMatch(/Something went wrong/)
      const stored = await namesOf(squadId)
      const isKept = stored.length > count
      expect(stored.length - count).toBe(isKept ? 1 : 0)
      expect(isKept).toBe((answer as { status?: string }).status === 'done')
      if (isKept) expect(stored.map(seen)).toContain(seen(name))
      count = stored.length
    }
    // And taken away again, no cell of them is run by a spreadsheet: ASVS 5.0, 1.2.10.
    const days = { squadId, from: '0001-01-01', to: '9999-12-31' }
    const { text } = await at.club.run((tx) => exportFile(tx, 'roster', days))
    const cells = parseRecords(text, ',').records.flatMap(({ cells }) => cells)
    expect(cells.length).toBeGreaterThan(30)
    expect(cells.filter((cell) => /^[=+\-@\t\r\n\0＝＋－＠]/.test(cell))).toEqual([])
  }, 60_000)
})

async function squadMore(number: number): Promise<string> {
  const id = newId()
  await at.club.run((tx) => recordSquads(tx, [{ id, name: `Squad ${number}`, ageLimit: 10 }]))
  return id
}
