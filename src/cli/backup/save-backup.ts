import { open as openFile, rm } from 'node:fs/promises'
import { partOf, putInPlace, removeLeftParts } from '#cli/backup/file-parts'
import { lookIntoBackup } from '#cli/backup/look-into-backup'
import { defaultWorkFactor, seal } from '#cli/backup/seal'
import { readWholeBook } from '#data/whole-book/read-whole-book'
import type { BackupClub } from '#exchange/backup/backup-shape'
import { type Section, writeBackup } from '#exchange/backup/write-backup'

export type SavedBackup = {
  readonly clubs: readonly BackupClub[]
  readonly tables: number
  readonly rows: number
}

/**
 * Writes the whole book to a file, sealed, reads the file back, and only then gives it its name. Whatever happens
 * before, what stood under that name stands there still.
 */
export async function saveBackup(wish: {
  readonly ownerUrl: string
  readonly file: string
  readonly passphrase: string
  readonly madeAt: Date
  readonly onProgress?: (doing: string) => void
  readonly signal?: AbortSignal
  /** Lower only where tests make many. */
  readonly workFactor?: number
}): Promise<SavedBackup> {
  const { ownerUrl, file, passphrase, madeAt, signal, workFactor = defaultWorkFactor } = wish
  const tell = wish.onProgress ?? (() => {})
  const part = partOf(file)
  await removeLeftParts(file)
  try {
    await readWholeBook(ownerUrl, async (book, sections) => {
      const told = countedSections(sections, { of: book.tables.length, tell, signal })
      const plain = writeBackup({ madeAt: madeAt.toISOString(), ...book }, told)
      await writePart(part, await seal(plain, { passphrase, workFactor }), signal)
    })
    tell('reading it back')
    const { header, rows } = await lookIntoBackup(part, { passphrase, signal })
    signal?.throwIfAborted()
    await putInPlace(part, file)
    return { clubs: header.clubs, tables: header.tables.length, rows }
  } catch (error) {
    await rm(part, { force: true })
    throw error
  }
}

async function* countedSections(
  sections: AsyncIterable<Section>,
  { of, tell, signal }: { of: number; tell: (doing: string) => void; signal: AbortSignal | undefined },
): AsyncGenerator<Section> {
  const names = new Set<string>()
  let bytes = 0
  for await (const section of sections) {
    signal?.throwIfAborted()
    names.add(section.table)
    tell(`table ${names.size} of ${of}, ${(bytes / 1e6).toFixed(1)} MB`)
    yield {
      ...section,
      rows: (async function* () {
        for await (const text of section.rows) {
          signal?.throwIfAborted()
          bytes += text.length
          yield text
        }
      })(),
    }
  }
}

async function writePart(
  part: string,
  sealed: AsyncIterable<Uint8Array>,
  signal: AbortSignal | undefined,
): Promise<void> {
  // Nobody else may read it, from its first byte on.
  const target = await openFile(part, 'wx', 0o600)
  try {
    for await (const piece of sealed) {
      signal?.throwIfAborted()
      await target.writeFile(piece)
    }
    await target.sync()
  } finally {
    await target.close()
  }
}
