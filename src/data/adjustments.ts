import 'server-only'
import type { Day } from '#common/time'
import { dateOf, dateOrNull, dayOf, dayOrNull } from '#data/days'
import { isId } from '#data/ids'
import type { ClubTx } from '#data/in-club'
import type { AgreedFewerTurns } from '#fairness/agreed-due'
import type { PlayerId } from '#squad/player'

/** Something agreed with a player and its family, both days included. No reason is stored. */
export type Adjustment = {
  readonly id: string
  readonly playerId: PlayerId
  readonly firstDay: Day
  readonly lastDay: Day | null
} & (
  | { readonly kind: 'fewerTurns'; readonly dueShare: number }
  /** Beside whom it has its first turn; null or missing: nobody is named yet. */
  | { readonly kind: 'sameFirstPartner'; readonly partnerId?: PlayerId | null }
  | { readonly kind: 'sameSide' | 'planShownEarly' | 'neverWaitsAlone' }
)

/** Of these players, in order of their first day. */
export async function listAdjustments(
  tx: ClubTx,
  playerIds: readonly PlayerId[],
): Promise<readonly Adjustment[]> {
  const rows = await tx.db.adjustment.findMany({
    where: { clubId: tx.clubId, playerId: { in: playerIds.filter(isId) } },
    select: {
      id: true,
      playerId: true,
      kind: true,
      dueShare: true,
      partnerId: true,
      firstDay: true,
      lastDay: true,
    },
    orderBy: [{ firstDay: 'asc' }, { id: 'asc' }],
  })
  return rows.map(({ id, playerId, kind, dueShare, partnerId, firstDay, lastDay }) => {
    const agreed = { id, playerId, firstDay: dayOf(firstDay), lastDay: dayOrNull(lastDay) }
    if (kind === 'fewerTurns') return { ...agreed, kind, dueShare: dueShare ?? 1 }
    return kind === 'sameFirstPartner' ? { ...agreed, kind, partnerId } : { ...agreed, kind }
  })
}

/** The adjustments that lower what is due. */
export function fewerTurnsOf(adjustments: readonly Adjustment[]): readonly AgreedFewerTurns[] {
  return adjustments.filter((one) => one.kind === 'fewerTurns')
}

/** The database refuses two of one kind for one player at the same time. */
export async function recordAdjustment(tx: ClubTx, adjustment: Adjustment): Promise<void> {
  const { id, playerId, kind } = adjustment
  await tx.db.adjustment.createMany({
    data: [
      {
        clubId: tx.clubId,
        id,
        playerId,
        kind,
        dueShare: adjustment.kind === 'fewerTurns' ? adjustment.dueShare : null,
        partnerId: adjustment.kind === 'sameFirstPartner' ? (adjustment.partnerId ?? null) : null,
        firstDay: dateOf(adjustment.firstDay),
        lastDay: dateOrNull(adjustment.lastDay),
      },
    ],
  })
}

export async function endAdjustment(
  tx: ClubTx,
  at: { readonly id: string; readonly lastDay: Day },
): Promise<void> {
  await tx.db.adjustment.update({
    where: { clubId_id: { clubId: tx.clubId, id: at.id } },
    data: { lastDay: dateOf(at.lastDay) },
    select: { id: true },
  })
}

/** Names the partner of a first turn where none is named yet. Returns whether it did. */
export async function nameFirstPartner(
  tx: ClubTx,
  at: { readonly id: string; readonly partnerId: PlayerId },
): Promise<boolean> {
  const { count } = await tx.db.adjustment.updateMany({
    where: { clubId: tx.clubId, id: at.id, kind: 'sameFirstPartner', partnerId: null },
    data: { partnerId: at.partnerId },
  })
  return count > 0
}
