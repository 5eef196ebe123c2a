import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { listConsentsOf, type NamedConsent } from '#data/consents'
import { listGuardiansOf } from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadIdsOf } from '#data/memberships'
import type { Person } from '#data/people'
import { getPlayer } from '#data/players'
import type { ChildCopy } from '#rights/child-copy'
import { loadChildCopy } from '#server/child-copy'
import { loadClubDay } from '#server/club-day'
import type { ExportedFile } from '#server/export-file'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { recordLook } from '#server/record-look'
import type { PlayerId } from '#squad/player'

/** A season of one child is thousands of lines. */
const timeoutMs = 60_000

/** Everything that is kept about one child, and what the administrator can do about it. */
export type ChildPage = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly locale: string
  readonly copy: ChildCopy
  readonly guardians: readonly Person[]
  readonly consents: readonly NamedConsent[]
  readonly squadIds: readonly string[]
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadChildPage(
  viewer: Viewer,
  { playerId, now = new Date() }: { readonly playerId: PlayerId; readonly now?: Date },
): Promise<ChildPage> {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { club, today } = await loadClubDay(tx, now)
      await getChild(tx, playerId)
      await recordLook(tx, viewer, { page: 'clubChild', playerId })
      return {
        frame: await loadFrame(tx, viewer, null),
        today,
        locale: club.locale,
        copy: await loadChildCopy(tx, { playerId, forId: null, now }),
        guardians: await listGuardiansOf(tx, playerId),
        consents: await listConsentsOf(tx, playerId),
        squadIds: await listSquadIdsOf(tx, playerId),
      }
    },
    { timeoutMs },
  )
}

/**
 * The copy to hand over, as a file: for one of the child's guardians, or for the club itself.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function loadChildFile(
  viewer: Viewer,
  at: { readonly playerId: PlayerId; readonly forId: string | null; readonly now?: Date },
): Promise<ExportedFile> {
  demand(viewer, 'answerRequests', { kind: 'club' })
  const { playerId, forId, now = new Date() } = at
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { name } = await getChild(tx, playerId)
      if (forId !== null && !(await listGuardiansOf(tx, playerId)).some(({ id }) => id === forId))
        throw new AppError('notFound', `no guardian ${forId} of ${playerId}`)
      const { today } = await loadClubDay(tx, now)
      const by = { personId: viewer.personId, at: now }
      const detail = { forGuardian: forId !== null }
      await recordAudit(tx, { action: 'copyChild', objectKind: 'player', objectId: playerId, detail, by })
      const copy = await loadChildCopy(tx, { playerId, forId, now })
      return {
        fileName: `${name}, all that is kept, ${today}.json`,
        mediaType: 'application/json',
        text: `${JSON.stringify(copy, null, 2)}\n`,
      }
    },
    { timeoutMs },
  )
}

/** A guest who turned out to be another stands in that child's copy. @throws AppError `notFound`. */
async function getChild(tx: ClubTx, playerId: PlayerId) {
  return getPlayer(tx, playerId)
}
