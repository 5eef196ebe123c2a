import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { removeGroundSize, setGroundSize } from '#data/ground-sizes'
import { inClub } from '#data/in-club'
import { type Done, saved } from '#server/action'
import type { GroundInput, RemoveGroundInput } from '#server/weeks-input'

type Answer = Promise<Result<Done, Problem>>

/** How large a ground is: the club's, by whoever practises there. @throws AppError `notAllowed`. */
export async function setGroundOf(viewer: Viewer, input: GroundInput, now = new Date()): Answer {
  const { squadId, place, lengthM, widthM } = input
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    await setGroundSize(tx, { place, lengthM, widthM })
    const by = { personId: viewer.personId, at: now }
    const detail = { lengthM, widthM }
    await recordAudit(tx, { action: 'setGround', objectKind: 'club', objectId: viewer.clubId, detail, by })
    return saved(`${place} is ${lengthM} by ${widthM} metres. Plans put no larger design there.`)
  })
}

/** Its size is not known any more. @throws AppError `notAllowed`. */
export async function removeGroundOf(
  viewer: Viewer,
  { squadId, place }: RemoveGroundInput,
  now = new Date(),
): Answer {
  demand(viewer, 'writeSession', { kind: 'squad', squadId })
  return inClub(viewer.clubId, async (tx) => {
    if (!(await removeGroundSize(tx, place)))
      return refuse({ path: '', message: 'This place is not in the list any more. Reload the page.' })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'removeGround', objectKind: 'club', objectId: viewer.clubId, by })
    return saved(`Taken out. Plans take ${place} as large enough for every design.`)
  })
}
