import 'server-only'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'

export type LinkKind = 'join' | 'family' | 'recover'

/** A link that opens one thing, once. Of its secret only a hash is kept. */
export type OneTimeLink = {
  readonly id: string
  readonly kind: LinkKind
  /** Whom it is for. */
  readonly personId: string
  /** The child whose page it opens; null but for `family`. */
  readonly playerId: string | null
  /** SHA-256 of the secret, as 64 hexadecimal digits. */
  readonly secretHash: string
  readonly expiresAt: Date
  readonly madeById: string | null
  readonly madeAt: Date
  readonly usedAt: Date | null
  readonly revokedAt: Date | null
}

const columns = {
  id: true,
  kind: true,
  personId: true,
  playerId: true,
  secretHash: true,
  expiresAt: true,
  madeById: true,
  madeAt: true,
  usedAt: true,
  revokedAt: true,
} as const

export async function findLink(tx: ClubTx, linkId: string): Promise<OneTimeLink | null> {
  if (!isId(linkId)) return null
  return tx.db.oneTimeLink.findUnique({
    where: { clubId_id: { clubId: tx.clubId, id: linkId } },
    select: columns,
  })
}

export async function recordLink(tx: ClubTx, link: Omit<OneTimeLink, 'usedAt' | 'revokedAt'>): Promise<void> {
  await tx.db.oneTimeLink.createMany({ data: [{ clubId: tx.clubId, ...link }] })
}

/** Links as a page lists them: nothing of the secret is among it. */
export type ListedLink = Omit<OneTimeLink, 'secretHash'> & {
  readonly playerName: string | null
  readonly madeByName: string | null
}

type WhichLinks = { readonly personId?: string; readonly playerId?: string }

/** The newest first. */
export async function listLinks(tx: ClubTx, which: WhichLinks): Promise<readonly ListedLink[]> {
  const rows = await tx.db.oneTimeLink.findMany({
    where: { clubId: tx.clubId, ...which },
    select: {
      ...columns,
      secretHash: false,
      player: { select: { name: true } },
      madeBy: { select: { name: true } },
    },
    orderBy: [{ madeAt: 'desc' }, { id: 'desc' }],
  })
  return rows.map(({ player, madeBy, ...row }) => ({
    ...row,
    playerName: player?.name ?? null,
    madeByName: madeBy?.name ?? null,
  }))
}

/** What still opens something at a moment. */
export async function listOpenLinks(tx: ClubTx, at: Date): Promise<readonly OneTimeLink[]> {
  return tx.db.oneTimeLink.findMany({
    where: { clubId: tx.clubId, usedAt: null, revokedAt: null, expiresAt: { gt: at } },
    select: columns,
  })
}

/** Takes back what is still open; answers how many that were. */
export async function revokeLinks(
  tx: ClubTx,
  which: WhichLinks & { readonly linkId?: string; readonly kind?: LinkKind },
  at: Date,
): Promise<number> {
  const { linkId, ...rest } = which
  const { count } = await tx.db.oneTimeLink.updateMany({
    where: { clubId: tx.clubId, ...(linkId ? { id: linkId } : {}), ...rest, usedAt: null, revokedAt: null },
    data: { revokedAt: at },
  })
  return count
}

/** Uses a link up, in one statement: of two who come at the same moment one is told false. */
export async function takeLink(
  tx: ClubTx,
  { linkId, secretHash, at }: { readonly linkId: string; readonly secretHash: string; readonly at: Date },
): Promise<boolean> {
  const { count } = await tx.db.oneTimeLink.updateMany({
    where: {
      clubId: tx.clubId,
      id: linkId,
      secretHash,
      usedAt: null,
      revokedAt: null,
      expiresAt: { gt: at },
    },
    data: { usedAt: at },
  })
  return count > 0
}
