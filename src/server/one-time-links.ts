import 'server-only'
import type { Viewer } from '#access/viewer'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import { type LinkKind, type OneTimeLink, recordLink, revokeLinks } from '#data/one-time-links'
import type { ShownLink } from '#server/form'
import { hashOfSecret } from '#server/helper-secret'
import { newSecret, textOfCode } from '#server/link-code'
import { qrCodeOf } from '#server/qr-code'

/** How long a link opens anything. A family takes its time; a way back into an account should be short. */
export const daysOfLink = { join: 7, family: 14, recover: 1 } as const satisfies Record<LinkKind, number>

const dayMs = 24 * 60 * 60 * 1000

type LinkToMake = Pick<OneTimeLink, 'kind' | 'personId' | 'playerId'> & {
  /** What the book is reached under. */
  readonly address: string
  readonly now: Date
}

/** What stands on the paper that is handed over. Nobody can read the secret again. */
export type MadeLink = ShownLink & { readonly linkId: string; readonly expiresAt: Date }

/**
 * Makes a link for one person, and takes back the one of its kind that was still open: what was lost opens nothing. The
 * caller has asked whether the viewer may.
 */
export async function makeLink(
  tx: ClubTx,
  viewer: Viewer,
  { kind, personId, playerId, address, now }: LinkToMake,
): Promise<MadeLink> {
  const secret = newSecret()
  const linkId = newId()
  const expiresAt = new Date(now.getTime() + daysOfLink[kind] * dayMs)
  const replaced = await revokeLinks(tx, { personId, kind, ...(playerId ? { playerId } : {}) }, now)
  await recordLink(tx, {
    ...{ id: linkId, kind, personId, playerId, expiresAt },
    secretHash: hashOfSecret(secret),
    madeById: viewer.personId,
    madeAt: now,
  })
  await recordAudit(tx, {
    action: 'makeLink',
    objectKind: 'person',
    objectId: personId,
    detail: { linkId, kind, playerId, replaced },
    by: { personId: viewer.personId, at: now },
  })
  const href = `${address}/welcome/${textOfCode({ clubId: tx.clubId, linkId, secret })}`
  return { linkId, href, code: qrCodeOf(href), expiresAt }
}
