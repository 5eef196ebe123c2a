import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { getClub, setCountsGoals } from '#data/clubs'
import { inClub } from '#data/in-club'
import { type Done, saved } from '#server/action'
import type { CountGoalsInput } from '#server/club-input'

/** Whether the club writes down the goals of its matches. @throws AppError `notAllowed`. */
export async function countGoalsOf(
  viewer: Viewer,
  { countsGoals }: CountGoalsInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const held = await getClub(tx)
    if (held.countsGoals === countsGoals)
      return refuse({ path: '', message: 'This is how it stands already.' })
    await setCountsGoals(tx, countsGoals)
    const by = { personId: viewer.personId, at: now }
    const detail = { countsGoals }
    await recordAudit(tx, { action: 'countGoals', objectKind: 'club', objectId: held.id, detail, by })
    return saved(
      countsGoals
        ? 'Goals of matches are counted from now on.'
        : 'Goals are no longer counted. Those that were written are kept, and shown nowhere.',
    )
  })
}
