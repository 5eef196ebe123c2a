import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import pg from 'pg'
import { afterAll } from 'vitest'
import { lookIntoBackup } from '#cli/backup/look-into-backup'
import { saveBackup } from '#cli/backup/save-backup'
import { open } from '#cli/backup/seal'
import type { Erased } from '#data/whole-book/erasures'
import { replaceWholeBook } from '#data/whole-book/replace-whole-book'
import { readBackup } from '#exchange/backup/read-backup'
import { askAs } from './ask-as'
import { openAgeBySpec } from './open-age-by-spec'

export const passphrase = 'five words and a fence'

/** Seals are cheap here: what makes a passphrase slow to guess is held by one test alone. */
export const workFactor = 8

const folder = mkdtempSync(join(tmpdir(), 'turnbook-backup-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
let files = 0

export function newFile(): string {
  files += 1
  return join(folder, `${files}.age`)
}

export async function backUp(ownerUrl: string, file = newFile()): Promise<string> {
  await saveBackup({ ownerUrl, file, passphrase, madeAt: new Date(), workFactor })
  return file
}

export async function putBack(
  ownerUrl: string,
  file: string,
  erased: readonly Erased[] = [],
): Promise<{ readonly erasedAgain: number }> {
  const { header } = await lookIntoBackup(file, { passphrase })
  const pieces = readBackup(open(file, passphrase))
  return replaceWholeBook(ownerUrl, { header, pieces, erased, onStep: () => {} })
}

/** The text inside a backup, opened and read by nothing of ours but the format's description. */
export function plainOf(file: string): string {
  return gunzipSync(openAgeBySpec(readFileSync(file), passphrase)).toString('utf8')
}

/**
 * Every table's rows as a hash of what PostgreSQL itself prints of them in no order, read in another way than a backup
 * does: by a superuser, whole, as one value a row. That a backup was put back is noted, and passed over here.
 */
export function hashesOf(ownerUrl: string): Promise<Readonly<Record<string, string>>> {
  return askAs(ownerUrl, async (client) => {
    const { rows } = await client.query<{ name: string }>(
      `select relname as name from pg_class where relnamespace = 'public'::regnamespace and relkind = 'r' order by 1`,
    )
    const hashes: Record<string, string> = {}
    for (const { name } of rows) {
      const { rows: texts } = await client.query<{ text: string }>(
        `select to_jsonb(t)::text as text from ${pg.escapeIdentifier(name)} t
         where to_jsonb(t) ->> 'action' is distinct from 'restoreBackup' order by 1`,
      )
      const all = texts.map(({ text }) => text).join('\n')
      hashes[name] = `${texts.length} ${createHash('md5').update(all).digest('hex')}`
    }
    return hashes
  })
}
