import 'server-only'
import type { BackupClub, BackupHeader, BackupMigration } from '#exchange/backup/backup-shape'

/** Why a backup cannot be put back into a database, in a sentence; null when it can. */
export function whyNotHere(
  backup: Pick<BackupHeader, 'migrations' | 'clubs' | 'tables'>,
  here: {
    readonly migrations: readonly BackupMigration[]
    readonly clubs: readonly BackupClub[]
    readonly tables: BackupHeader['tables']
  },
): string | null {
  return (
    whyOtherVersion(backup.migrations, here.migrations) ??
    whyOtherTables(backup.tables, here.tables) ??
    whyOtherKind(backup.clubs, here.clubs)
  )
}

function whyOtherVersion(
  theirs: readonly BackupMigration[],
  ours: readonly BackupMigration[],
): string | null {
  const newer = theirs.find(({ name }) => !ours.some((own) => own.name === name))
  if (newer)
    return `was made by a newer Turnbook, whose tables had the change ${newer.name}; that version would be right`
  const missing = ours.find(({ name }) => !theirs.some((their) => their.name === name))
  if (missing)
    return `was made by an older Turnbook, before the change ${missing.name} of the tables; put it back with that version, then update, would be right`
  const edited = theirs.find(
    ({ name, checksum }) => ours.find((own) => own.name === name)?.checksum !== checksum,
  )
  return edited
    ? `was made by another Turnbook, whose change ${edited.name} of the tables was not ours; the one that made it would be right`
    : null
}

function whyOtherTables(theirs: BackupHeader['tables'], ours: BackupHeader['tables']): string | null {
  const form = (tables: BackupHeader['tables']) =>
    tables.map(({ name, columns, isByClub }) => `${name}(${columns})${isByClub}`).join()
  return form(theirs) === form(ours)
    ? null
    : 'holds other tables than this database; a database whose tables nobody changed by hand would be right'
}

function whyOtherKind(theirs: readonly BackupClub[], ours: readonly BackupClub[]): string | null {
  const [isDemo, isDemoHere] = [theirs, ours].map((clubs) => clubs[0]?.isDemo)
  if (isDemo === undefined || isDemoHere === undefined || isDemo === isDemoHere) return null
  return isDemo
    ? 'holds the demo club, and here is a club of people, which it would replace; a database without a club would be right'
    : 'holds a club of people, and here is the demo club; a start of its own (npm start -- --own-club) would be right'
}
