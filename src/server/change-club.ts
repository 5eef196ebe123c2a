import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { changeClub, getClub } from '#data/clubs'
import { inClub } from '#data/in-club'
import { type Done, saved } from '#server/action'
import type { ClubSettingsInput } from '#server/club-input'

/** The club's name, and the zone by which its day begins. @throws AppError `notAllowed`. */
export async function changeClubOf(
  viewer: Viewer,
  { name, timeZone }: ClubSettingsInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'arrangeClub', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const held = await getClub(tx)
    if (held.name === name && held.timeZone === timeZone)
      return refuse({ path: '', message: 'This is how it stands already; change the name or the time zone.' })
    await changeClub(tx, { name, timeZone })
    const by = { personId: viewer.personId, at: now }
    const detail = { isRenamed: held.name !== name, timeZone }
    await recordAudit(tx, { action: 'changeClub', objectKind: 'club', objectId: held.id, detail, by })
    return saved('Saved.')
  })
}
