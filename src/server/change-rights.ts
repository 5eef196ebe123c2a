import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { listRequests } from '#data/child-requests'
import { listConsentsOf, recordConsent, withdrawConsent } from '#data/consents'
import { listErasedIds } from '#data/erasures'
import { listGuardiansOf } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { getPlayer } from '#data/players'
import { standsAlready } from '#rights/consent'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { eraseChildNow } from '#server/erase-child'
import type { ConsentInput, EraseInput, WithdrawInput } from '#server/rights-input'

type Answer = Promise<Result<Done, Problem>>

const gone = 'This child was erased already; nothing is kept that names it.'

/**
 * Erases a child for good, because its family asked. `isFresh`: who asks has signed in a short while ago.
 * @throws AppError `notAllowed` or `notFound`.
 */
export async function eraseChildOf(
  viewer: Viewer,
  { playerId, name }: EraseInput,
  { isFresh, now = new Date() }: { readonly isFresh: boolean; readonly now?: Date },
): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  if (!isFresh)
    return refuse({
      path: '',
      message:
        'Sign out, sign in again and come back here first: nobody is to erase a child at a screen that somebody left open.',
    })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const player = await getPlayer(tx, playerId)
      if ((await listErasedIds(tx)).has(playerId)) return refuse({ path: '', message: gone })
      if (name.trim() !== player.name)
        return refuse({
          path: 'name',
          message: `is not "${player.name}"; write the name exactly so to erase this child`,
        })
      const asked = (await listRequests(tx)).some(
        (one) => one.playerId === playerId && one.kind === 'erasure' && one.outcome === null,
      )
      if (!asked)
        return refuse({
          path: '',
          message:
            'Nobody has asked for it. Write the request down first, on the page “What families ask”, so that it can be seen later why the child is gone.',
        })
      await eraseChildNow(tx, { playerId, cause: 'request', by: { personId: viewer.personId, at: now } })
      return saved(
        'Erased. Nothing here names the child any more. Tell the family, and see to what is named below.',
      )
    },
    { timeoutMs: 60_000 },
  )
}

/** What a guardian agreed to, on paper or by word. @throws AppError `notAllowed` or `notFound`. */
export async function recordConsentOf(viewer: Viewer, input: ConsentInput, now = new Date()): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const { playerId, givenById, givenOn, kind } = input
    const { name } = await getPlayer(tx, playerId)
    if ((await listErasedIds(tx)).has(playerId)) return refuse({ path: '', message: gone })
    if (!(await listGuardiansOf(tx, playerId)).some(({ id }) => id === givenById))
      return refuse({
        path: 'givenById',
        message: `is not written down as a guardian of ${name}; choose one who is`,
      })
    if (givenOn > today)
      return refuse({ path: 'givenOn', message: `has not come yet; choose ${today} or an earlier day` })
    if (standsAlready(await listConsentsOf(tx, playerId), input))
      return refuse({
        path: 'kind',
        message: 'is agreed to by this guardian already; end that first, then write the new one',
      })
    const by = { personId: viewer.personId, at: now }
    const id = newId()
    await recordConsent(tx, { id, ...input, by })
    const detail = { kind, playerId }
    await recordAudit(tx, { action: 'recordConsent', objectKind: 'consent', objectId: id, detail, by })
    return saved('Written down.')
  })
}

/** A guardian takes back what it agreed to. @throws AppError `notAllowed`. */
export async function withdrawConsentOf(
  viewer: Viewer,
  { playerId, consentId, on }: WithdrawInput,
  now = new Date(),
): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    if (on > today)
      return refuse({ path: 'on', message: `has not come yet; choose ${today} or an earlier day` })
    if (!(await withdrawConsent(tx, { id: consentId, playerId, on })))
      return refuse({ path: 'on', message: 'is before the day it was given, or it is withdrawn already' })
    const by = { personId: viewer.personId, at: now }
    const detail = { on, playerId }
    await recordAudit(tx, {
      action: 'withdrawConsent',
      objectKind: 'consent',
      objectId: consentId,
      detail,
      by,
    })
    return saved('Withdrawn. See to it that what was agreed stops.')
  })
}
