import { type BackupHeader, backupFormat, type SectionName } from '#exchange/backup/backup-shape'
import { startTally } from '#exchange/backup/start-tally'

/** Whole lines of COPY text, in any cut. */
export type Section = SectionName & { readonly rows: AsyncIterable<Buffer> }

/** Ends the rows of a section, as it ends COPY text everywhere: no row can look like it. */
export const endOfRows = Buffer.from('\\.\n')

/**
 * A whole book as a stream of lines: a header; for each section its name, its rows, an end mark and their number and
 * hash; an end line. All but the rows is JSON, one value a line.
 */
export async function* writeBackup(
  header: Omit<BackupHeader, 'format'>,
  sections: AsyncIterable<Section>,
): AsyncGenerator<Buffer> {
  yield line({ format: backupFormat, ...header } satisfies BackupHeader)
  const all = { sections: 0, rows: 0 }
  for await (const { table, clubId, rows } of sections) {
    yield line({ table, clubId } satisfies SectionName)
    const counted = startTally()
    for await (const text of rows) {
      counted.add(text)
      yield text
    }
    const tally = counted.tally()
    yield endOfRows
    yield line(tally)
    all.sections += 1
    all.rows += tally.rows
  }
  yield line({ end: all })
}

function line(value: unknown): Buffer {
  return Buffer.from(`${JSON.stringify(value)}\n`)
}
