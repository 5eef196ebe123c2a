import 'server-only'
import { AppError } from '#common/app-error'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import { type Adult, changeAccess, claimAdult, endSessions, findAdult, findAdultOfLogin } from '#data/adults'
import { recordAudit } from '#data/audit'
import { isKnownElsewhere } from '#data/clubs-of-login'
import {
  claimGuardianship,
  findGuardianship,
  listGuardianships,
  recordGuardianships,
  removeGuardianship,
} from '#data/guardianships'
import { type ClubTx, inClub } from '#data/in-club'
import { findLink, type OneTimeLink, takeLink } from '#data/one-time-links'
import { hashOfSecret, isSecretOf } from '#server/helper-secret'
import type { LinkCode } from '#server/link-code'

/** One and the same for a link that was used, taken back, is over or was never made: nothing is told apart by trying. */
export const deadLink =
  'This link opens nothing. Links work once, and only for some days. Ask whoever gave it to you for a new one.'

/** What a good link is for. */
export type GoodLink = { readonly link: OneTimeLink; readonly person: Adult }

/** The link of a code and whom it is for; null when it opens nothing, whatever the reason. Changes nothing. */
export async function findGoodLink(tx: ClubTx, code: LinkCode, now: Date): Promise<GoodLink | null> {
  const link = await findLink(tx, code.linkId)
  if (!link || !isSecretOf(code.secret, link.secretHash)) return null
  if (link.usedAt || link.revokedAt || link.expiresAt <= now) return null
  const person = await findAdult(tx, link.personId)
  if (!person || person.accessEndedAt) return null
  if (link.kind === 'join') return person.loginId ? null : { link, person }
  if (link.kind === 'recover') return person.loginId ? { link, person } : null
  const guardianship = await findGuardianship(tx, { personId: person.id, playerId: link.playerId ?? '' })
  return guardianship && !guardianship.claimedAt ? { link, person } : null
}

/** As whom the sign-in is in the club now, and whose page was opened. */
export type SpentLink = {
  readonly clubId: string
  readonly personId: string
  readonly playerId: string | null
}

const otherSignIn: Problem = {
  path: '',
  message:
    'This link is for somebody who has a sign-in here already, and you are signed in with another. Sign out, then sign in with that one and open the link again.',
}
const isSomebody: Problem = {
  path: '',
  message:
    'Your sign-in belongs to somebody of this club already. Ask the administrator to change your role: that needs no link.',
}

/** Uses a link to join, or to open a child's page, for a sign-in: the link is gone and the access there, or neither. */
export async function spendLinkAs(
  code: LinkCode,
  { loginId, now = new Date() }: { readonly loginId: string; readonly now?: Date },
): Promise<Result<SpentLink, Problem>> {
  return orDead(
    inClub(code.clubId, async (tx) => {
      const good = await findGoodLink(tx, code, now)
      if (!good || good.link.kind === 'recover') throw dead()
      const { link, person } = good
      if (person.loginId !== null && person.loginId !== loginId) return refuse(otherSignIn)
      const known = await findAdultOfLogin(tx, loginId)
      if (known?.accessEndedAt) throw dead()
      if (link.kind === 'join' && known) return refuse(isSomebody)
      await take(tx, code, now)
      const holder = known ?? person
      if (!known && !(await claimAdult(tx, { personId: person.id, loginId }))) throw dead()
      const { playerId } = link
      if (playerId !== null) await openPage(tx, { holder, person, playerId, now })
      await recordUse(tx, { link, holder, now })
      return accept({ clubId: tx.clubId, personId: holder.id, playerId })
    }),
  )
}

/**
 * Uses a link for a new password. `save` keeps it, and may still refuse it; the link is then as good as before. Every
 * session of the sign-in ends.
 */
export async function spendLinkToRecover(
  code: LinkCode,
  {
    save,
    now = new Date(),
  }: {
    readonly save: (loginId: string) => Promise<Result<unknown, Problem>>
    readonly now?: Date
  },
): Promise<Result<{ readonly loginId: string }, Problem>> {
  return orDead(
    inClub(code.clubId, async (tx) => {
      const good = await findGoodLink(tx, code, now)
      const loginId = good?.person.loginId
      if (good?.link.kind !== 'recover' || !loginId) throw dead()
      // It may have been let into another club since the link was made.
      if (await isKnownElsewhere(tx, loginId)) throw dead()
      await take(tx, code, now)
      const kept = await save(loginId)
      if (!kept.ok) throw new Refused(kept.reasons)
      await endSessions(tx, loginId)
      await recordUse(tx, { link: good.link, holder: good.person, now })
      return accept({ loginId })
    }),
  )
}

type Opening = {
  /** Who gets the page. */
  readonly holder: Adult
  /** Whom the administrator recorded: the same, or a second entry of somebody who was in the club already. */
  readonly person: Adult
  readonly playerId: string
  readonly now: Date
}

async function openPage(tx: ClubTx, { holder, person, playerId, now }: Opening): Promise<void> {
  if (holder.id === person.id) {
    if (!(await claimGuardianship(tx, { personId: person.id, playerId, at: now }))) throw dead()
    return
  }
  const recorded = await findGuardianship(tx, { personId: person.id, playerId })
  if (!recorded || !(await removeGuardianship(tx, recorded))) throw dead()
  const { recordedById, withholdsComing } = recorded
  const own = { personId: holder.id, playerId, recordedById, withholdsComing }
  if (await findGuardianship(tx, own)) await claimGuardianship(tx, { ...own, at: now })
  else await recordGuardianships(tx, [{ ...own, claimedAt: now }])
  const left = await listGuardianships(tx, { personId: person.id })
  // The second entry has nothing left to open: it is put away, so that nobody invites it again.
  if (left.length === 0 && person.role === 'guardian')
    await changeAccess(tx, { personId: person.id, endedAt: now })
}

async function take(tx: ClubTx, { linkId, secret }: LinkCode, at: Date): Promise<void> {
  if (!(await takeLink(tx, { linkId, secretHash: hashOfSecret(secret), at }))) throw dead()
}

async function recordUse(
  tx: ClubTx,
  { link, holder, now }: { readonly link: OneTimeLink; readonly holder: Adult; readonly now: Date },
): Promise<void> {
  await recordAudit(tx, {
    action: 'useLink',
    objectKind: 'person',
    objectId: holder.id,
    detail: { linkId: link.id, kind: link.kind, playerId: link.playerId, recordedFor: link.personId },
    by: { personId: holder.id, at: now },
  })
}

/** Undoes the transaction and carries what is said instead. */
class Refused extends Error {
  constructor(readonly reasons: readonly Problem[]) {
    super('a link was not used')
  }
}

const dead = () => new Refused([{ path: '', message: deadLink }])

async function orDead<Value>(using: Promise<Result<Value, Problem>>): Promise<Result<Value, Problem>> {
  try {
    return await using
  } catch (error) {
    if (error instanceof Refused) return { ok: false, reasons: error.reasons }
    // Two wrote the same at once: this one was the later.
    if (error instanceof AppError && error.code === 'conflict') return refuse({ path: '', message: deadLink })
    throw error
  }
}
