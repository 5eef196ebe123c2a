import 'server-only'
import type { DeedName } from '#access/deed-words'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'

type Detail = Readonly<Record<string, string | number | boolean | null>>

/** What was done to which thing: ids, counts and days, never a name or a reason. */
export type Deed = {
  readonly action: DeedName
  readonly objectKind: string
  readonly objectId: string
  readonly detail?: Detail
}

/** Writes what was done, in the transaction that does it. */
export async function recordAudit(
  tx: ClubTx,
  { by, ...deed }: Deed & { readonly by: Author },
): Promise<void> {
  const { action, objectKind, objectId, detail = {} } = deed
  await tx.db.auditEntry.createMany({
    data: [
      {
        clubId: tx.clubId,
        id: newId(),
        at: by.at,
        personId: by.personId,
        action,
        objectKind,
        objectId,
        detail,
      },
    ],
  })
}

/** As it stands: a book that was put back may know deeds that this program does not. */
export type AuditEntry = Required<Omit<Deed, 'action'>> & {
  readonly id: string
  readonly action: string
  readonly at: Date
  readonly personName: string | null
}

export const entryColumns = {
  id: true,
  action: true,
  objectKind: true,
  objectId: true,
  detail: true,
  at: true,
  person: { select: { name: true } },
} as const

type EntryRow = Omit<AuditEntry, 'detail' | 'personName'> & {
  readonly detail: unknown
  readonly person: { readonly name: string } | null
}

export function toEntry({ person, detail, ...row }: EntryRow): AuditEntry {
  return { ...row, detail: detail as Detail, personName: person?.name ?? null }
}

/** The newest first. */
export async function listAudit(
  tx: ClubTx,
  { limit }: { readonly limit: number },
): Promise<readonly AuditEntry[]> {
  const rows = await tx.db.auditEntry.findMany({
    where: { clubId: tx.clubId },
    select: entryColumns,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: limit,
  })
  return rows.map(toEntry)
}

/** What was done to one thing, of some kinds of deed; the newest first. */
export async function listDeedsOn(
  tx: ClubTx,
  { objectId, actions }: { readonly objectId: string; readonly actions: readonly DeedName[] },
): Promise<readonly AuditEntry[]> {
  const rows = await tx.db.auditEntry.findMany({
    where: { clubId: tx.clubId, objectId, action: { in: [...actions] } },
    select: entryColumns,
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  })
  return rows.map(toEntry)
}
