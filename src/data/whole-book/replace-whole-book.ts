import 'server-only'
import { isDeepStrictEqual } from 'node:util'
import pg from 'pg'
import { newId } from '#data/ids'
import { enterClub, withBookConnection } from '#data/whole-book/book-connection'
import {
  type BookTable,
  listBookClubs,
  listBookMigrations,
  listBookTables,
} from '#data/whole-book/book-tables'
import { type Erased, eraseAgain, listErased } from '#data/whole-book/erasures'
import { loadSections } from '#data/whole-book/load-sections'
import { beginAlone } from '#data/whole-book/lock-book'
import { mustHoldTheSame } from '#data/whole-book/must-hold-the-same'
import { whyNotHere } from '#data/whole-book/why-not-here'
import { BackupFault } from '#exchange/backup/backup-fault'
import type { BackupHeader } from '#exchange/backup/backup-shape'
import type { BackupPiece } from '#exchange/backup/read-backup'

/** By which migrating programs keep out of each other's way. */
const migrationLock = 72707369

/**
 * Puts a backup in the place of the whole book: all of it, or, whatever happens, nothing. Pages wait meanwhile.
 * Whoever was erased stays erased, nobody stays signed in, and links and codes given away no longer open anything.
 * @throws BackupFault when it does not belong here, or the pages leave no moment for it.
 */
export function replaceWholeBook(
  ownerUrl: string,
  how: {
    readonly header: BackupHeader
    /** The backup, read anew: it is held against its counts and hashes as it comes. */
    readonly pieces: AsyncIterable<BackupPiece>
    /** Children erased of whom the database may not know. */
    readonly erased: readonly Erased[]
    readonly patienceMs?: number
    readonly onStep: (doing: string) => void
    readonly signal?: AbortSignal
  },
): Promise<{ readonly erasedAgain: number }> {
  const { header, pieces, onStep, signal, patienceMs = 60_000 } = how
  return withBookConnection(ownerUrl, async (client) => {
    // Opening the seal takes a second: not while the pages wait.
    const coming = pieces[Symbol.asyncIterator]()
    await mustBeginWith(header, coming)
    const { kept, passing } = await listBookTables(client)
    const all = [...kept, ...passing]
    onStep('waiting for a moment when no page writes')
    if (!(await beginAlone(client, { tables: all, patienceMs, signal })))
      throw new BackupFault(
        'could not be put back, because pages kept the book busy; a quieter moment would be right',
      )
    await client.query('select pg_advisory_xact_lock($1)', [migrationLock])
    await mustFitHere(client, { header, kept })
    await forEach(client, all, liftGuards)
    const erased = [...(await listErased(client)), ...how.erased]
    onStep('putting the rows back')
    await client.query(`truncate ${all.map(({ name }) => pg.escapeIdentifier(name)).join(', ')}`)
    const tallies = await loadSections(client, { coming, tables: kept, signal })
    onStep('holding what is there now against the backup')
    await mustHoldTheSame(client, { tallies, tables: kept, clubs: header.clubs, signal })
    await forEach(client, all, setGuards)
    const erasedAgain = await eraseAgain(client, erased)
    await closeDoors(client, header)
    await noteInAudit(client, header)
    signal?.throwIfAborted()
    await client.query('commit')
    return { erasedAgain }
  })
}

/** It is read a second time: between the two it could have become another file. */
async function mustBeginWith(header: BackupHeader, coming: AsyncIterator<BackupPiece>): Promise<void> {
  const { value: first } = await coming.next()
  if (!isDeepStrictEqual({ ...first, kind: 'header' }, { ...header, kind: 'header' }))
    throw new BackupFault('became another file while it was read; one that stays would be right')
}

async function mustFitHere(
  client: pg.Client,
  { header, kept }: { readonly header: BackupHeader; readonly kept: readonly BookTable[] },
): Promise<void> {
  const why = whyNotHere(header, {
    migrations: await listBookMigrations(client),
    clubs: await listBookClubs(client),
    tables: [...kept],
  })
  if (why) throw new BackupFault(why)
}

async function forEach(
  client: pg.Client,
  tables: readonly BookTable[],
  change: (table: BookTable) => readonly string[],
): Promise<void> {
  for (const table of tables)
    for (const how of change(table))
      await client.query(`alter table ${pg.escapeIdentifier(table.name)} ${how}`)
}

/** What stays written is never removed, and what is entered is checked as it is written: neither is so of a restore. */
function liftGuards({ isForced }: BookTable): readonly string[] {
  return ['disable trigger user', ...(isForced ? ['no force row level security'] : [])]
}

function setGuards({ isForced }: BookTable): readonly string[] {
  return ['enable trigger user', ...(isForced ? ['force row level security'] : [])]
}

/** What was done since is no longer in the record; that it was put back is. */
async function noteInAudit(client: pg.Client, { clubs, madeAt }: BackupHeader): Promise<void> {
  for (const { id } of clubs) {
    await enterClub(client, id)
    await client.query(
      `insert into "AuditEntry" ("clubId", id, at, "personId", action, "objectKind", "objectId", detail)
       values ($1::uuid, $2, now(), null, 'restoreBackup', 'club', $1::uuid::text, $3)`,
      [id, newId(), JSON.stringify({ madeAt })],
    )
  }
}

/** Used, ended or taken back since the backup was made: the book no longer knows, so none may open anything again. */
async function closeDoors(client: pg.Client, { clubs }: BackupHeader): Promise<void> {
  for (const { id } of clubs) {
    await enterClub(client, id)
    await client.query(
      'update "OneTimeLink" set "revokedAt" = now() where "usedAt" is null and "revokedAt" is null',
    )
    await client.query('update "HelperPass" set "revokedAt" = now() where "revokedAt" is null')
    await client.query('update "CalendarFeed" set "revokedAt" = now() where "revokedAt" is null')
  }
}
