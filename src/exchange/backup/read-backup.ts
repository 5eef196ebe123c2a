import { isDamaged } from '#exchange/backup/backup-fault'
import {
  type BackupHeader,
  readBackupHeader,
  readSectionOrEnd,
  readTally,
  type SectionName,
  type Tally,
} from '#exchange/backup/backup-shape'
import { LineSource } from '#exchange/backup/line-source'
import { startTally } from '#exchange/backup/start-tally'

/** What a backup says, piece by piece. A section has been held against its count and hash when its `tally` comes. */
export type BackupPiece =
  | ({ readonly kind: 'header' } & BackupHeader)
  | ({ readonly kind: 'section' } & SectionName)
  | { readonly kind: 'rows'; readonly text: Buffer }
  | ({ readonly kind: 'tally' } & Tally)
  | { readonly kind: 'end'; readonly sections: number; readonly rows: number }

/**
 * Reads what `writeBackup` wrote. Every section that the header promises comes once, in its order.
 * @throws BackupFault for anything else, at the latest at the end.
 */
export async function* readBackup(source: AsyncIterable<Uint8Array>): AsyncGenerator<BackupPiece> {
  const lines = new LineSource(source)
  const header = readBackupHeader(await lines.line())
  yield { kind: 'header', ...header }
  const read = { sections: 0, rows: 0 }
  for (const wanted of sectionsOf(header)) {
    const section = readSectionOrEnd(await lines.line())
    if ('end' in section || section.table !== wanted.table || section.clubId !== wanted.clubId)
      throw isDamaged('a part of it is missing')
    yield { kind: 'section', ...section }
    const counted = startTally()
    for (let text = await lines.rows(); text; text = await lines.rows()) {
      counted.add(text)
      yield { kind: 'rows', text }
    }
    const [said, found] = [readTally(await lines.line()), counted.tally()]
    if (said.rows !== found.rows || said.sha256 !== found.sha256)
      throw isDamaged(`the rows of ${section.table} are not those that were written`)
    yield { kind: 'tally', ...found }
    read.sections += 1
    read.rows += found.rows
  }
  const last = readSectionOrEnd(await lines.line())
  if (!('end' in last) || last.end.sections !== read.sections || last.end.rows !== read.rows)
    throw isDamaged('its end does not fit the rest')
  await lines.mustEnd()
  yield { kind: 'end', ...read }
}

/** The sections of a book in their order: table by table, and in each, where its rows belong to clubs, club by club. */
export function sectionsOf({
  tables,
  clubs,
}: Pick<BackupHeader, 'tables' | 'clubs'>): readonly SectionName[] {
  return tables.flatMap(({ name, isByClub }): SectionName[] =>
    isByClub ? clubs.map(({ id }) => ({ table: name, clubId: id })) : [{ table: name, clubId: null }],
  )
}
