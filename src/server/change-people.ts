import 'server-only'
import type { DeedName } from '#access/deed-words'
import { demand } from '#access/demand'
import { mayGiveRole } from '#access/giving-roles'
import { isLastAdministrator } from '#access/last-administrator'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import {
  type Adult,
  changeAccess,
  changeAdult,
  endSessionsHere,
  getAdult,
  listAdults,
  lockAdults,
  recordAdult,
} from '#data/adults'
import { recordAudit } from '#data/audit'
import { revokeCalendarFeeds } from '#data/calendar-feeds'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { revokeLinks } from '#data/one-time-links'
import { type Done, goTo, saved } from '#server/action'
import type { ChangePersonInput, NewPersonInput, OfPersonInput } from '#server/people-input'

type Answer = Promise<Result<Done, Problem>>

const notYourRole = {
  path: 'role',
  message: 'is above your own; somebody who has it can give it',
}
const lastOne = {
  path: '',
  message:
    'Nobody else with a sign-in is an administrator here. Let another administrator join first, or nobody could arrange this club any more.',
}

/** Writes an adult of the club down. @throws AppError `notAllowed`. */
export async function addPersonOf(viewer: Viewer, input: NewPersonInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'managePeople', { kind: 'club' })
    if (!mayGiveRole(viewer.role, input.role)) return refuse(notYourRole)
    const { name, role, email } = input
    const personId = newId()
    await recordAdult(tx, { id: personId, name, role, email })
    await recordDeed(tx, viewer, { action: 'addPerson', personId, detail: { role }, now })
    return goTo(`/club/people/${personId}`)
  })
}

/** Name, address and role. A new role holds from the next request on. @throws AppError `notAllowed` or `notFound`. */
export async function changePersonOf(viewer: Viewer, input: ChangePersonInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    const { personId, name, role, email } = input
    const hasNewRole = person.role !== role
    if (person.name === name && !hasNewRole && person.email === email)
      return refuse({ path: '', message: 'Nothing is different from what stands there already.' })
    if (hasNewRole && !(mayGiveRole(viewer.role, role) && mayGiveRole(viewer.role, person.role)))
      return refuse(notYourRole)
    if (hasNewRole && (await isLast(tx, personId))) return refuse(lastOne)
    await changeAdult(tx, personId, { name, role, email })
    const detail = {
      isRenamed: person.name !== name,
      hasNewAddress: person.email !== email,
      ...(hasNewRole ? { roleBefore: person.role, role } : {}),
    }
    await recordDeed(tx, viewer, { action: 'changePerson', personId, detail, now })
    return saved(hasNewRole ? 'Saved. The new role holds from now on.' : 'Saved.')
  })
}

/** From now on the person's sign-in opens nothing here, and no link for it does. @throws AppError `notAllowed` or `notFound`. */
export async function endAccessOf(viewer: Viewer, input: OfPersonInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    if (person.accessEndedAt) return refuse({ path: '', message: 'This access has ended already.' })
    if (!mayGiveRole(viewer.role, person.role)) return refuse(notYourRole)
    if (await isLast(tx, person.id)) return refuse(lastOne)
    await changeAccess(tx, { personId: person.id, endedAt: now })
    if (person.loginId) await endSessionsHere(tx, person.loginId)
    const revoked = await revokeLinks(tx, { personId: person.id }, now)
    await revokeCalendarFeeds(tx, { personId: person.id, at: now })
    await recordDeed(tx, viewer, { action: 'endAccess', personId: person.id, detail: { revoked }, now })
    return saved('Ended. What this person wrote stays in the book.')
  })
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function giveAccessBackOf(viewer: Viewer, input: OfPersonInput, now = new Date()): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const person = await openPerson(tx, viewer, input)
    if (!person.accessEndedAt) return refuse({ path: '', message: 'This person has access already.' })
    if (!mayGiveRole(viewer.role, person.role)) return refuse(notYourRole)
    await changeAccess(tx, { personId: person.id, endedAt: null })
    await recordDeed(tx, viewer, { action: 'giveAccessBack', personId: person.id, detail: {}, now })
    return saved('Given back. Links from before open nothing any more: make a new one if it is needed.')
  })
}

/** One adult of the club to be changed; whoever else changes adults waits. @throws AppError `notAllowed` or `notFound`. */
export async function openPerson(
  tx: ClubTx,
  viewer: Viewer,
  { personId }: { readonly personId: string },
): Promise<Adult> {
  demand(viewer, 'managePeople', { kind: 'club' })
  await lockAdults(tx)
  return getAdult(tx, personId)
}

async function isLast(tx: ClubTx, personId: string): Promise<boolean> {
  const standing = (await listAdults(tx)).map(({ id, role, loginId, accessEndedAt }) => ({
    id,
    role,
    hasAccess: accessEndedAt === null,
    canSignIn: loginId !== null,
  }))
  return isLastAdministrator(standing, personId)
}

type PersonDeed = {
  readonly action: DeedName
  readonly personId: string
  readonly detail: Readonly<Record<string, string | number | boolean | null>>
  readonly now: Date
}

/** The audit row of what was done to an adult. */
export async function recordDeed(
  tx: ClubTx,
  viewer: Viewer,
  { action, personId, detail, now }: PersonDeed,
): Promise<void> {
  const by = { personId: viewer.personId, at: now }
  await recordAudit(tx, { action, objectKind: 'person', objectId: personId, detail, by })
}
