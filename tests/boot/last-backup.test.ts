import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { noteBackup } from '#cli/backup/note-backup'
import { lastBackupSentence } from '../../src/boot/last-backup.mjs'

const folder = mkdtempSync(join(tmpdir(), 'turnbook-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('what the start says of the last backup', () => {
  it('is that there is none, where none is noted or the note cannot be read', () => {
    expect(lastBackupSentence(folder, new Date())).toBe('No backup yet: npm run turnbook -- backup FILE')
    for (const note of ['', '{"madeAt":"soon"}', 'null', '[]']) {
      writeFileSync(join(folder, 'backup.json'), note)
      expect(lastBackupSentence(folder, new Date())).toContain('No backup yet')
    }
  })

  it.each([
    ['2026-09-01T12:00:00Z', 'less than a day old'],
    ['2026-09-02T11:59:59Z', 'less than a day old'],
    ['2026-09-02T12:00:00Z', '1 day old: npm run'],
    ['2026-10-01T12:00:00Z', '30 days old: npm run'],
    ['2026-08-31T12:00:00Z', 'less than a day old'],
  ])('at %s is that it is %s', async (now, sentence) => {
    await noteBackup(folder, { madeAt: new Date('2026-09-01T12:00:00Z') })
    expect(lastBackupSentence(folder, new Date(now))).toContain(sentence)
  })
})
