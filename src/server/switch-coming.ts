import 'server-only'
import { z } from 'zod'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import type { Result } from '#common/result'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { changeShowsComing } from '#data/shows-coming'
import { getSquad } from '#data/squads'
import { type Done, saved } from '#server/action'

export const switchComingInput = z.object({ squadId: z.uuid(), showsComing: z.enum(['yes', 'no']) })

/** Whether families of a squad read time and place of what comes. @throws AppError `notAllowed` or `notFound`. */
export async function switchComingOf(
  viewer: Viewer,
  input: z.infer<typeof switchComingInput>,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  const { squadId } = input
  const showsComing = input.showsComing === 'yes'
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'confirmFamilyPage', { kind: 'squad', squadId })
    await getSquad(tx, squadId)
    await changeShowsComing(tx, { squadId, showsComing })
    await recordAudit(tx, {
      action: 'switchComing',
      objectKind: 'squad',
      objectId: squadId,
      detail: { showsComing },
      by: { personId: viewer.personId, at: now },
    })
    return saved(
      showsComing
        ? 'Families now read time and place of the next practice, at once.'
        : 'Families no longer read time and place of the next practice.',
    )
  })
}
