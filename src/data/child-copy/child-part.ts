import 'server-only'
import { instant, instantOrNull } from '#data/child-copy/at-session'
import { dayOf, dayOrNull } from '#data/days'
import type { ClubTx } from '#data/in-club'
import type { ChildCopy } from '#rights/child-copy'
import type { PlayerId } from '#squad/player'

type Part = Pick<
  ChildCopy,
  | 'child'
  | 'asGuest'
  | 'squads'
  | 'guardians'
  | 'keepsGoal'
  | 'lines'
  | 'away'
  | 'agreements'
  | 'pairs'
  | 'links'
>

/** Who a child is to the club. `forId`: the guardian the copy is for, who does not read who the others are. */
export async function loadChildPart(
  tx: ClubTx,
  { playerId, forId }: { readonly playerId: PlayerId; readonly forId: string | null },
): Promise<Part> {
  const { clubId, db } = tx
  const player = await db.player.findUniqueOrThrow({ where: { clubId_id: { clubId, id: playerId } } })
  const own = forId === null ? {} : { personId: forId }
  const guests = await db.player.findMany({ where: { clubId, joinedToId: playerId }, orderBy: { id: 'asc' } })
  const memberships = await db.squadMembership.findMany({
    where: { clubId, playerId },
    include: { squad: { select: { name: true } } },
    orderBy: { firstDay: 'asc' },
  })
  const guardians = await db.guardianship.findMany({
    where: { clubId, playerId, ...own },
    include: { person: { select: { name: true, email: true } } },
    orderBy: { recordedAt: 'asc' },
  })
  const keeps = await db.keepsChange.findMany({ where: { clubId, playerId }, orderBy: { seq: 'asc' } })
  const lines = await db.lineWish.findMany({ where: { clubId, playerId }, orderBy: { line: 'asc' } })
  const away = await db.playerAway.findMany({ where: { clubId, playerId }, orderBy: { firstDay: 'asc' } })
  const agreements = await db.adjustment.findMany({
    where: { clubId, playerId },
    orderBy: { firstDay: 'asc' },
  })
  const pairs = await db.playerPair.findMany({
    where: { clubId, OR: [{ oneId: playerId }, { otherId: playerId }] },
    include: { squad: { select: { name: true } } },
    orderBy: { firstDay: 'asc' },
  })
  const links = await db.oneTimeLink.findMany({
    where: { clubId, playerId, ...own },
    orderBy: { madeAt: 'asc' },
  })
  return {
    child: {
      id: player.id,
      name: player.name,
      mayKeepGoal: player.keeps,
      asksToKeepGoal: player.wantsToKeep,
      codeInFiles: player.code,
      cameAsGuestOn: dayOrNull(player.guestSince),
      erasedAt: instantOrNull(player.erasedAt),
    },
    asGuest: guests.map(({ id, name, guestSince }) => ({ id, name, since: dayOrNull(guestSince) })),
    squads: memberships.map(({ squad, firstDay, lastDay }) => ({
      squad: squad.name,
      firstDay: dayOf(firstDay),
      lastDay: dayOrNull(lastDay),
    })),
    guardians: guardians.map(({ person, recordedAt, claimedAt, withholdsComing }) => ({
      ...person,
      recordedAt: instant(recordedAt),
      claimedAt: instantOrNull(claimedAt),
      withholdsComing,
    })),
    keepsGoal: keeps.map((one) => ({
      day: dayOf(one.day),
      may: one.keeps,
      recordedAt: instant(one.recordedAt),
    })),
    lines: lines.map(({ line, wish }) => ({ line, said: wish })),
    away: away.map(({ firstDay, lastDay }) => ({ firstDay: dayOf(firstDay), lastDay: dayOf(lastDay) })),
    agreements: agreements.map(({ kind, dueShare, firstDay, lastDay }) => ({
      kind,
      partOfEvenShare: dueShare,
      firstDay: dayOf(firstDay),
      lastDay: dayOrNull(lastDay),
    })),
    pairs: pairs.map(({ squad, kind, firstDay, lastDay }) => ({
      squad: squad.name,
      kind,
      firstDay: dayOf(firstDay),
      lastDay: dayOrNull(lastDay),
    })),
    links: links.map(({ kind, madeAt, expiresAt, usedAt, revokedAt }) => ({
      kind,
      madeAt: instant(madeAt),
      expiresAt: instant(expiresAt),
      usedAt: instantOrNull(usedAt),
      takenBackAt: instantOrNull(revokedAt),
    })),
  }
}
