import 'server-only'
import { recordAudit } from '#data/audit'
import type { Author } from '#data/author'
import { recordFamilyPages } from '#data/family-pages'
import type { ClubTx } from '#data/in-club'
import { showsFrom } from '#family/shows-from'
import type { PageToConfirm } from '#server/pages-of-squad'
import type { SquadSeason } from '#server/squad-season'
import { dayIn } from '#server/today'

/** Keeps pages as confirmed, each with its audit row. */
export async function savePages(
  tx: ClubTx,
  at: {
    readonly of: Pick<SquadSeason, 'club' | 'squad' | 'season'>
    readonly pages: readonly PageToConfirm[]
    readonly confirmedBy: string
    readonly by: Author
  },
): Promise<void> {
  const { club, squad, season } = at.of
  const confirmedOn = dayIn(club.timeZone, at.by.at)
  await recordFamilyPages(
    tx,
    at.pages.map(({ child, page }) => ({
      playerId: child.id,
      squadId: squad.id,
      seasonId: season.id,
      page,
      confirmedById: at.by.personId,
      confirmedBy: at.confirmedBy,
      confirmedAt: at.by.at,
      showsFrom: showsFrom({ confirmedOn, timeZone: club.timeZone }),
    })),
  )
  for (const { child } of at.pages) {
    await recordAudit(tx, {
      action: 'confirmFamilyPage',
      objectKind: 'player',
      objectId: child.id,
      detail: { squadId: squad.id },
      by: at.by,
    })
  }
}
