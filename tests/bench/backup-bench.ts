import { mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { to as copyTo } from 'pg-copy-streams'
import { saveBackup } from '#cli/backup/save-backup'
import { listBookTables } from '#data/whole-book/book-tables'
import { type Measured, medianPair } from './measure'

/** A backup, sealed and read back, against the same tables copied out plain and thrown away. */
export async function benchBackup(
  databaseUrl: string,
  say: (line: string) => void,
): Promise<readonly Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'turnbook-bench-'))
  const file = join(folder, 'book.age')
  const client = new pg.Client({ connectionString: databaseUrl })
  await client.connect()
  try {
    const { kept } = await listBookTables(client)
    const runs = 3
    let plainBytes = 0
    let rows = 0
    const pair = await medianPair(runs, {
      ours: async () => {
        const passphrase = 'five words and a fence'
        rows = (await saveBackup({ ownerUrl: databaseUrl, file, passphrase, madeAt: new Date() })).rows
      },
      peer: async () => {
        plainBytes = 0
        for (const { name } of kept) {
          const copy = client.query(copyTo(`copy ${pg.escapeIdentifier(name)} to stdout`))
          for await (const piece of copy) plainBytes += piece.length
        }
      },
    })
    const megabytes = (bytes: number) => (bytes / 1e6).toFixed(1)
    say(`${rows} rows: ${megabytes(plainBytes)} MB plain, ${megabytes(statSync(file).size)} MB as a backup`)
    const what = `backup of ${Math.round(rows / 1000)} thousand rows, sealed and read back`
    return [{ what, peer: 'the same tables by COPY, plain', runs, ...pair }]
  } finally {
    await client.end()
    rmSync(folder, { recursive: true })
  }
}
