import 'server-only'
import { demand } from '#access/demand'
import { mayGiveRole } from '#access/giving-roles'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { type Adult, getAdult } from '#data/adults'
import { recordAudit } from '#data/audit'
import { getClub } from '#data/clubs'
import { isKnownElsewhere } from '#data/clubs-of-login'
import { findGuardianship } from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { listSquadIdsOf } from '#data/memberships'
import { findLink, revokeLinks } from '#data/one-time-links'
import { type Done, saved } from '#server/action'
import { openPerson } from '#server/change-people'
import { handOver, type LinkToHandOver } from '#server/hand-over-link'
import { makeLink } from '#server/one-time-links'
import type {
  FamilyLinkInput,
  PersonLinkInput,
  RevokeFamilyLinkInput,
  RevokePersonLinkInput,
} from '#server/people-input'
import type { PlayerId } from '#squad/player'

type Answer = Promise<Result<Done, Problem>>
type Made = Result<LinkToHandOver, Problem>
type How = PersonLinkInput['how']
type At = { readonly address: string; readonly now?: Date }

/** A link by which somebody joins, or sets a new password. @throws AppError `notAllowed` or `notFound`. */
export async function makePersonLinkOf(
  viewer: Viewer,
  { personId, kind, how, address, now = new Date() }: PersonLinkInput & At,
): Answer {
  const made = await inClub(viewer.clubId, async (tx): Promise<Made> => {
    const person = await openPerson(tx, viewer, { personId })
    const why = whyNoLink(person, how) ?? (await whyNotOfKind(tx, viewer, { person, kind }))
    if (why) return refuse({ path: '', message: why })
    const link = await makeLink(tx, viewer, { kind, personId, playerId: null, address, now })
    return accept({ link, kind, ...(await about(tx, person, how)) })
  })
  return made.ok ? handOver(made.value) : made
}

/**
 * A link that opens one child's page to one guardian whom the administrator has recorded.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function makeFamilyLinkOf(
  viewer: Viewer,
  { personId, playerId, how, address, now = new Date() }: FamilyLinkInput & At,
): Answer {
  const made = await inClub(viewer.clubId, async (tx): Promise<Made> => {
    await demandInviting(tx, viewer, playerId)
    const guardianship = await findGuardianship(tx, { personId, playerId })
    if (!guardianship) throw new AppError('notFound', `${personId} is no guardian of ${playerId}`)
    const person = await getAdult(tx, personId)
    const why = guardianship.claimedAt
      ? `${person.name} has opened this page already and needs no link.`
      : whyNoLink(person, how)
    if (why) return refuse({ path: '', message: why })
    const link = await makeLink(tx, viewer, { kind: 'family', personId, playerId, address, now })
    return accept({ link, kind: 'family', ...(await about(tx, person, how)) })
  })
  return made.ok ? handOver(made.value) : made
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function revokePersonLinkOf(
  viewer: Viewer,
  { personId, linkId }: RevokePersonLinkInput,
  now = new Date(),
): Answer {
  return inClub(viewer.clubId, async (tx) => {
    await openPerson(tx, viewer, { personId })
    return revoke(tx, viewer, { personId, linkId, now })
  })
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function revokeFamilyLinkOf(
  viewer: Viewer,
  { playerId, linkId }: RevokeFamilyLinkInput,
  now = new Date(),
): Answer {
  return inClub(viewer.clubId, async (tx) => {
    await demandInviting(tx, viewer, playerId)
    return revoke(tx, viewer, { playerId, linkId, now })
  })
}

async function revoke(
  tx: ClubTx,
  viewer: Viewer,
  { now, ...which }: { personId?: string; playerId?: string; linkId: string; now: Date },
): Answer {
  const link = await findLink(tx, which.linkId)
  if (!link || (await revokeLinks(tx, which, now)) === 0)
    return refuse({ path: '', message: 'This link opens nothing any more. Nothing had to be taken back.' })
  await recordAudit(tx, {
    action: 'revokeLink',
    objectKind: 'person',
    objectId: link.personId,
    detail: { linkId: link.id, kind: link.kind, playerId: link.playerId },
    by: { personId: viewer.personId, at: now },
  })
  return saved('Taken back. The link opens nothing any more.')
}

/** Whoever coaches a squad that the child is or was in, and who arranges the club. */
async function demandInviting(tx: ClubTx, viewer: Viewer, playerId: PlayerId): Promise<void> {
  const squadIds = await listSquadIdsOf(tx, playerId)
  demand(viewer, 'inviteFamily', { kind: 'player', playerId, squadIds })
}

function whyNoLink({ name, email, accessEndedAt }: Adult, how: How): string | null {
  if (accessEndedAt) return `The access of ${name} has ended. The administrator can give it back first.`
  if (how === 'mail' && email === null)
    return `No address is written down for ${name}. Show the link instead, or ask the administrator to write one down.`
  return null
}

async function about(tx: ClubTx, { name, email }: Adult, how: How) {
  return { name, clubName: (await getClub(tx)).name, mailTo: how === 'mail' ? email : null }
}

async function whyNotOfKind(
  tx: ClubTx,
  viewer: Viewer,
  { person, kind }: { readonly person: Adult; readonly kind: 'join' | 'recover' },
): Promise<string | null> {
  if (!mayGiveRole(viewer.role, person.role)) return 'This person’s role is above your own.'
  if (kind === 'join') {
    if (person.loginId)
      return `${person.name} has a sign-in already. A link for a new password may be what is needed.`
    return person.role === 'guardian'
      ? 'A parent or guardian comes in by a link for a child: choose the child below.'
      : null
  }
  if (!person.loginId) return `${person.name} has no sign-in yet. Make a link to join.`
  return (await isKnownElsewhere(tx, person.loginId))
    ? 'This sign-in opens another club too, so nobody here can set a new password for it. Its owner can ask for one on the page where one signs in.'
    : null
}
