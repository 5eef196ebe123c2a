import { open } from '#cli/backup/seal'
import type { BackupHeader } from '#exchange/backup/backup-shape'
import { readBackup } from '#exchange/backup/read-backup'

export type BackupContents = {
  readonly header: BackupHeader
  readonly rows: number
  /** Rows by table. */
  readonly rowsOf: ReadonlyMap<string, number>
}

/**
 * Reads a backup from its first byte to its last and holds all of it against its counts and hashes.
 * @throws BackupFault
 */
export async function lookIntoBackup(
  file: string,
  { passphrase, signal }: { readonly passphrase: string; readonly signal?: AbortSignal },
): Promise<BackupContents> {
  const rowsOf = new Map<string, number>()
  let header: BackupHeader | null = null
  let table = ''
  let rows = 0
  for await (const piece of readBackup(open(file, passphrase))) {
    signal?.throwIfAborted()
    if (piece.kind === 'header') header = piece
    if (piece.kind === 'section') table = piece.table
    if (piece.kind === 'tally') rowsOf.set(table, (rowsOf.get(table) ?? 0) + piece.rows)
    if (piece.kind === 'end') rows = piece.rows
  }
  if (!header) throw new Error('a backup without a header was taken')
  return { header, rows, rowsOf }
}
