import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'

/** Lets whoever has its secret join one practice. Of the secret only a hash is kept. */
export type HelperPass = {
  readonly id: string
  readonly sessionId: string
  /** SHA-256 of the secret, as 64 hexadecimal digits. */
  readonly secretHash: string
  readonly expiresAt: Date
  readonly madeById: string | null
  readonly madeAt: Date
  readonly revokedAt: Date | null
}

const columns = {
  id: true,
  sessionId: true,
  secretHash: true,
  expiresAt: true,
  madeById: true,
  madeAt: true,
  revokedAt: true,
} as const

export async function findHelperPass(tx: ClubTx, passId: string): Promise<HelperPass | null> {
  if (!isId(passId)) return null
  return tx.db.helperPass.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: passId } },
    select: columns,
  })
}

/** Of one practice, the newest first; those that are over or taken back too. */
export async function listHelperPasses(tx: ClubTx, sessionId: string): Promise<readonly HelperPass[]> {
  if (!isId(sessionId)) return []
  return tx.db.helperPass.findMany({
    where: { clubId: tx.clubId, sessionId },
    select: columns,
    orderBy: [{ madeAt: 'desc' }, { id: 'desc' }],
  })
}

export async function recordHelperPass(tx: ClubTx, pass: Omit<HelperPass, 'revokedAt'>): Promise<void> {
  await tx.db.helperPass.createMany({ data: [{ clubId: tx.clubId, ...pass }] })
}

/** Takes a pass back; from the next request on it opens nothing. False: it is none of the practice, or was before. */
export async function revokeHelperPass(
  tx: ClubTx,
  { sessionId, passId, at }: { readonly sessionId: string; readonly passId: string; readonly at: Date },
): Promise<boolean> {
  if (!isId(passId)) return false
  const { count } = await tx.db.helperPass.updateMany({
    where: { clubId: tx.clubId, sessionId, id: passId, revokedAt: null },
    data: { revokedAt: at },
  })
  return count > 0
}
