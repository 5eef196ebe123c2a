import 'server-only'
import type { Day } from '#common/time'
import type { Author } from '#data/author'
import { dateOf, dayOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { Consent } from '#rights/consent'
import type { PlayerId } from '#squad/player'

/** With who gave it; null: nobody was named. */
export type NamedConsent = Consent & { readonly givenByName: string | null }

/** Of one child, the latest first. In a guardian's transaction: those that guardian gave. */
export async function listConsentsOf(tx: ClubTx, playerId: PlayerId): Promise<readonly NamedConsent[]> {
  if (!isId(playerId)) return []
  const rows = await tx.db.consent.findMany({
    where: { clubId: tx.clubId, playerId },
    select: {
      id: true,
      playerId: true,
      kind: true,
      wording: true,
      givenById: true,
      givenOn: true,
      withdrawnOn: true,
      givenBy: { select: { name: true } },
    },
    orderBy: [{ givenOn: 'desc' }, { id: 'desc' }],
  })
  return rows.map(({ givenBy, givenOn, withdrawnOn, ...row }) => ({
    ...row,
    givenOn: dayOf(givenOn),
    withdrawnOn: dayOrNull(withdrawnOn),
    givenByName: givenBy?.name ?? null,
  }))
}

export async function recordConsent(
  tx: ClubTx,
  { by, givenOn, ...consent }: Omit<Consent, 'withdrawnOn'> & { readonly by: Author },
): Promise<void> {
  await tx.db.consent.createMany({
    data: [
      {
        clubId: tx.clubId,
        ...consent,
        givenOn: dateOf(givenOn),
        recordedById: by.personId,
        recordedAt: by.at,
      },
    ],
  })
}

/** False: there is no such consent of the child, or it was withdrawn before. */
export async function withdrawConsent(
  tx: ClubTx,
  { id, playerId, on }: { readonly id: string; readonly playerId: PlayerId; readonly on: Day },
): Promise<boolean> {
  const { count } = await tx.db.consent.updateMany({
    where: { clubId: tx.clubId, id, playerId, withdrawnOn: null, givenOn: { lte: dateOf(on) } },
    data: { withdrawnOn: dateOf(on) },
  })
  return count > 0
}
