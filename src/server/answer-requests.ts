import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { answerRequest, extendRequest, getRequest, recordRequest } from '#data/child-requests'
import { getClubRights, saveClubRights } from '#data/club-rights'
import { listErasedIds } from '#data/erasures'
import { listGuardiansOf } from '#data/guardianships'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { getPlayer } from '#data/players'
import { listChildDays } from '#data/retention-days'
import { listSeasons } from '#data/seasons'
import { dueDays, whyNotExtend } from '#rights/child-request'
import { dayInWords } from '#rights/day-in-words'
import { retentionOf } from '#rights/retention'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import type { AnswerInput, ClubRightsInput, ExtendInput, WriteDownInput } from '#server/rights-input'

type Answer = Promise<Result<Done, Problem>>

/** A request that came by word of mouth or letter. @throws AppError `notAllowed` or `notFound`. */
export async function writeDownRequestOf(viewer: Viewer, input: WriteDownInput, now = new Date()): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    const { playerId, kind, text, askedById, receivedOn } = input
    const { name } = await getPlayer(tx, playerId)
    if ((await listErasedIds(tx)).has(playerId))
      return refuse({ path: 'playerId', message: 'was erased; nothing is kept that could be asked about' })
    if (receivedOn > today)
      return refuse({ path: 'receivedOn', message: `has not come yet; choose ${today} or an earlier day` })
    if (askedById !== null && !(await listGuardiansOf(tx, playerId)).some(({ id }) => id === askedById))
      return refuse({
        path: 'askedById',
        message: `is not written down as a guardian of ${name}; choose one who is, or nobody`,
      })
    const { holidays } = await getClubRights(tx)
    const { dueOn } = dueDays(receivedOn, holidays)
    const id = newId()
    await recordRequest(tx, { id, playerId, kind, text, askedById, receivedOn, dueOn })
    const by = { personId: viewer.personId, at: now }
    const detail = { kind, playerId, receivedOn }
    await recordAudit(tx, { action: 'writeDownRequest', objectKind: 'request', objectId: id, detail, by })
    return saved(`Written down. It is to be answered by ${dayInWords(dueOn, club.locale)}.`)
  })
}

/** More time for a request that is hard to answer. @throws AppError `notAllowed` or `notFound`. */
export async function extendRequestOf(
  viewer: Viewer,
  { requestId, to, why }: ExtendInput,
  now = new Date(),
): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const request = await getRequest(tx, requestId)
    const reason = whyNotExtend(request, today)
    if (reason) return refuse({ path: '', message: whyNot[reason] })
    const { latest } = dueDays(request.receivedOn, (await getClubRights(tx)).holidays)
    if (to <= request.dueOn || to > latest)
      return refuse({
        path: 'to',
        message: `is out of reach; choose a day after ${request.dueOn}, up to ${latest}`,
      })
    if (!(await extendRequest(tx, { id: requestId, to, why })))
      return refuse({ path: '', message: whyNot.extended })
    const by = { personId: viewer.personId, at: now }
    const detail = { to, playerId: request.playerId }
    await recordAudit(tx, { action: 'extendRequest', objectKind: 'request', objectId: requestId, detail, by })
    return saved('The new day stands, and the family reads it with the reason on its page. Tell them too.')
  })
}

const whyNot = {
  answered: 'It is answered already.',
  extended: 'It was given more time once already; there is no second time.',
  tooLate:
    'Its month is over. The family is to hear inside the first month that it takes longer; answer as soon as you can.',
} as const

/** @throws AppError `notAllowed` or `notFound`. */
export async function answerRequestOf(
  viewer: Viewer,
  { requestId, outcome, answer }: AnswerInput,
  now = new Date(),
): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const by = { personId: viewer.personId, at: now }
    const { playerId, askedById, kind, erasedAt } = await getRequest(tx, requestId)
    if (kind === 'erasure' && outcome === 'done' && erasedAt === null)
      return refuse({
        path: 'outcome',
        message:
          'is not so yet: the child’s name still stands here. Erase it on the child’s page; that answers this too.',
      })
    if (!(await answerRequest(tx, { id: requestId, outcome, answer, by })))
      return refuse({
        path: '',
        message: 'It is answered already, and an answer that a family has read stays.',
      })
    const detail = { outcome, playerId }
    await recordAudit(tx, { action: 'answerRequest', objectKind: 'request', objectId: requestId, detail, by })
    return saved(
      askedById === null
        ? 'Answered. Nobody of the club’s guardians asked it, so tell the family yourself.'
        : 'Answered. The guardian who asked reads it on the child’s page.',
    )
  })
}

/** How long names are kept, whom families ask, which days are public holidays. @throws AppError `notAllowed`. */
export async function changeClubRightsOf(
  viewer: Viewer,
  { sure, ...rights }: ClubRightsInput,
  now = new Date(),
): Answer {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const { retentionMonths: months } = rights
    if (months !== null && !sure) {
      const { over } = retentionOf(await listChildDays(tx), { seasons: await listSeasons(tx), months, today })
      if (over.length > 0)
        return refuse({
          path: 'retentionMonths',
          message: `would erase ${over.length === 1 ? '1 child' : `${over.length} children`} at once, whose time is over by it. Choose more months, or tick that you are sure`,
        })
    }
    const before = await getClubRights(tx)
    await saveClubRights(tx, rights)
    const by = { personId: viewer.personId, at: now }
    const detail = {
      retentionMonths: months,
      before: before.retentionMonths,
      holidays: rights.holidays.length,
    }
    await recordAudit(tx, {
      action: 'changeClubRights',
      objectKind: 'club',
      objectId: viewer.clubId,
      detail,
      by,
    })
    return saved('Saved.')
  })
}
