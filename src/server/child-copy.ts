import 'server-only'
import { loadChildPart } from '#data/child-copy/child-part'
import { loadFamilyPart } from '#data/child-copy/family-part'
import { loadFiguresPart } from '#data/child-copy/figures-part'
import { listMentions } from '#data/child-copy/mentions-part'
import { loadPlansPart } from '#data/child-copy/plans-part'
import { loadWrittenPart } from '#data/child-copy/written-part'
import { listClubPlayers } from '#data/club-players'
import { getClubRights } from '#data/club-rights'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { aboutParts, type ChildCopy, childFormat } from '#rights/child-copy'
import { valueWithoutNames } from '#rights/without-names'
import type { PlayerId } from '#squad/player'

/**
 * Everything that is kept about one child. Names of other children that stand in what people wrote are taken out, of
 * the whole of it: nothing of another child leaves with it. `forId`: the guardian it is for, who does not read who the
 * other guardians are. Callers have asked whether the viewer may. @throws AppError `notFound`.
 */
export async function loadChildCopy(
  tx: ClubTx,
  {
    playerId,
    forId,
    now,
  }: { readonly playerId: PlayerId; readonly forId: string | null; readonly now: Date },
): Promise<ChildCopy> {
  const club = await getClub(tx)
  const { askWhom, retentionMonths } = await getClubRights(tx)
  const { child, ...whose } = await loadChildPart(tx, { playerId, forId })
  const others = (await listClubPlayers(tx)).filter(({ id }) => id !== playerId).map(({ name }) => name)
  const names = { own: child.name, others }
  const told = {
    ...(await loadWrittenPart(tx, playerId)),
    ...(await loadFiguresPart(tx, playerId)),
    ...(await loadPlansPart(tx, playerId)),
    ...(await loadFamilyPart(tx, { playerId, forId })),
    mentions: await listMentions(tx, { playerId, name: child.name }),
  }
  return {
    format: childFormat,
    madeAt: now.toISOString(),
    club: { name: club.name, askWhom, keptMonths: retentionMonths },
    about: aboutParts,
    child,
    ...whose,
    ...(valueWithoutNames(told, names) as typeof told),
  }
}
