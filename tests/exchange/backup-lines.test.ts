import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { BackupHeader } from '#exchange/backup/backup-shape'
import { readBackup, sectionsOf } from '#exchange/backup/read-backup'
import { writeBackup } from '#exchange/backup/write-backup'

const clubs = [1, 2].map((number) => ({
  id: `0198c0de-0000-7000-8000-00000000000${number}`,
  name: `Club ${number}`,
  isDemo: false,
}))
const header: Omit<BackupHeader, 'format'> = {
  madeAt: '2026-10-01T09:00:00.000Z',
  migrations: [{ name: '1', checksum: 'a' }],
  tables: [
    { name: 'Club', columns: ['id'], isByClub: true },
    { name: 'Login', columns: ['id', 'name'], isByClub: false },
  ],
  clubs,
}

/** COPY text never has a bare line end or backslash in a row; an end mark inside it is written `\\.`. */
const row = fc
  .array(fc.constantFrom('a', 'é', '\\\\.', '\\N', '\t', '.', '\\n', '{', '"', '𝄞'), { maxLength: 8 })
  .map((letters) => `${letters.join('')}\n`)
const rowsOf = fc.array(row, { maxLength: 6 }).map((rows) => rows.join(''))

async function* cut(bytes: Buffer, lengths: readonly number[]): AsyncGenerator<Buffer> {
  for (let at = 0, turn = 0; at < bytes.length; turn += 1) {
    const length = lengths[turn % lengths.length] ?? 1
    yield bytes.subarray(at, at + length)
    at += length
  }
}

describe('the lines of a backup', () => {
  it('come back the same, however the bytes are cut on the way', async () => {
    const sections = sectionsOf(header)
    const cuts = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 5 })
    await fc.assert(
      fc.asyncProperty(
        fc.array(rowsOf, { minLength: 3, maxLength: 3 }),
        cuts,
        cuts,
        async (texts, one, two) => {
          const given = (async function* () {
            for (const [index, section] of sections.entries())
              yield { ...section, rows: cut(Buffer.from(texts[index] ?? ''), one) }
          })()
          const written: Buffer[] = []
          for await (const piece of writeBackup(header, given)) written.push(piece)
          const read = new Map<string, string>()
          let key = ''
          let rows = -1
          for await (const piece of readBackup(cut(Buffer.concat(written), two))) {
            if (piece.kind === 'header') expect(piece).toMatchObject(header)
            if (piece.kind === 'section') key = `${piece.table} ${piece.clubId}`
            if (piece.kind === 'section') read.set(key, '')
            if (piece.kind === 'rows') read.set(key, `${read.get(key)}${piece.text}`)
            if (piece.kind === 'end') rows = piece.rows
          }
          expect([...read.values()]).toEqual(texts)
          expect(rows).toBe(texts.join('').split('\n').length - 1)
        },
      ),
      { numRuns: 150 },
    )
  })
})
