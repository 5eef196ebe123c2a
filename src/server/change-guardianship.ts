import 'server-only'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { getChild } from '#data/family-children'
import {
  changeWithholding,
  findGuardianship,
  recordGuardianships,
  removeGuardianship,
} from '#data/guardianships'
import { inClub } from '#data/in-club'
import { revokeLinks } from '#data/one-time-links'
import { type Done, saved } from '#server/action'
import { openPerson, recordDeed } from '#server/change-people'
import type { GuardianOfInput, WithholdInput } from '#server/people-input'

type Answer = Promise<Result<Done, Problem>>

/** Records whose parent or carer somebody is; a link then opens the page. @throws AppError `notAllowed` or `notFound`. */
export async function recordGuardianOf(viewer: Viewer, input: GuardianOfInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const child = await getChild(tx, input.playerId)
    const of = { personId: person.id, playerId: child.id }
    if (await findGuardianship(tx, of))
      return refuse({ path: 'playerId', message: `is recorded already: ${person.name} for ${child.name}` })
    await recordGuardianships(tx, [{ ...of, claimedAt: null, recordedById: viewer.personId }])
    const detail = { playerId: child.id }
    await recordDeed(tx, viewer, { action: 'recordGuardian', personId: person.id, detail, now })
    return saved(`Recorded: ${person.name} for ${child.name}. The page opens once a link for it was used.`)
  })
}

/** From the next request on the child's page is closed to this person. @throws AppError `notAllowed` or `notFound`. */
export async function removeGuardianOf(viewer: Viewer, input: GuardianOfInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const of = { personId: person.id, playerId: input.playerId }
    if (!(await removeGuardianship(tx, of)))
      return refuse({ path: '', message: 'This was taken away already.' })
    const revoked = await revokeLinks(tx, of, now)
    const detail = { playerId: input.playerId, revoked }
    await recordDeed(tx, viewer, { action: 'removeGuardian', personId: person.id, detail, now })
    return saved('Taken away. The page is closed to this person, and no open link opens it.')
  })
}

/** Whether time and place of what comes are kept from one guardian. @throws AppError `notAllowed` or `notFound`. */
export async function withholdComingOf(viewer: Viewer, input: WithholdInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const { playerId, withholdsComing } = input
    const of = { personId: person.id, playerId }
    const guardianship = await findGuardianship(tx, of)
    if (!guardianship) throw new AppError('notFound', `${person.id} is no guardian of ${playerId}`)
    if (guardianship.withholdsComing === withholdsComing)
      return refuse({ path: '', message: 'Nothing is different from what stands there already.' })
    await changeWithholding(tx, { ...of, withholdsComing })
    const detail = { playerId, withholdsComing }
    await recordDeed(tx, viewer, { action: 'withholdComing', personId: person.id, detail, now })
    return saved(
      withholdsComing
        ? 'Saved. Time and place are kept from this person.'
        : 'Saved. Nothing is kept back any more.',
    )
  })
}
