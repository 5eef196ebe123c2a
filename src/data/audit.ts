import 'server-only'
import type { Author } from '#data/author'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'

type Detail = Readonly<Record<string, string | number | boolean | null>>

/** What was done to which thing: ids, counts and days, never a name or a reason. */
export type Deed = {
  readonly action: string
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

export type AuditEntry = Required<Deed> & { readonly at: Date; readonly personName: string | null }

/** The newest first. */
export async function listAudit(
  tx: ClubTx,
  { limit }: { readonly limit: number },
): Promise<readonly AuditEntry[]> {
  const rows = await tx.db.auditEntry.findMany({
    where: { clubId: tx.clubId },
    select: {
      action: true,
      objectKind: true,
      objectId: true,
      detail: true,
      at: true,
      person: { select: { name: true } },
    },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    take: limit,
  })
  return rows.map(({ person, detail, ...row }) => ({
    ...row,
    detail: detail as Detail,
    personName: person?.name ?? null,
  }))
}
