import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Day } from '#common/time'
import { getRequest, listRequests, type NamedRequest } from '#data/child-requests'
import { listClubPlayers } from '#data/club-players'
import { type ClubRights, getClubRights } from '#data/club-rights'
import { listErasedIds } from '#data/erasures'
import { listGuardiansOf } from '#data/guardianships'
import { inClub } from '#data/in-club'
import type { Person } from '#data/people'
import { listChildDays } from '#data/retention-days'
import { listSeasons } from '#data/seasons'
import { dueDays, inOrderOfUrgency, whyNotExtend } from '#rights/child-request'
import { type RetentionDue, retentionOf } from '#rights/retention'
import { loadClubDay } from '#server/club-day'
import { forgetChildrenWhenDue } from '#server/forget-children'
import { type FrameOfPage, loadFrame } from '#server/page-frame'
import { recordLook } from '#server/record-look'

export type NamedDue = RetentionDue & { readonly name: string }

/** What families have asked, and what the club has set for it. */
export type RequestsPage = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly locale: string
  /** Open ones first, the most urgent at the top. */
  readonly requests: readonly NamedRequest[]
  readonly rights: ClubRights
  /** Whose names go by themselves in the next sixty days; null: the club has not decided how long names are kept. */
  readonly soon: readonly NamedDue[] | null
  /** Every child of the club with a name: whose request is written down, whose page is opened. */
  readonly children: readonly { readonly id: string; readonly name: string }[]
}

/** @throws AppError `notAllowed`. */
export async function loadRequests(viewer: Viewer, now = new Date()): Promise<RequestsPage> {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    await forgetChildrenWhenDue(tx, { today, now })
    const rights = await getClubRights(tx)
    const erased = await listErasedIds(tx)
    const children = (await listClubPlayers(tx)).filter(({ id }) => !erased.has(id))
    const names = new Map(children.map(({ id, name }) => [id, name]))
    const { retentionMonths: months } = rights
    const due =
      months === null
        ? null
        : retentionOf(await listChildDays(tx), { seasons: await listSeasons(tx), months, today })
    return {
      frame: await loadFrame(tx, viewer, null),
      today,
      locale: club.locale,
      requests: inOrderOfUrgency(await listRequests(tx)),
      rights,
      soon: due?.soon.map((one) => ({ ...one, name: names.get(one.playerId) ?? '' })) ?? null,
      children: children.map(({ id, name }) => ({ id, name })),
    }
  })
}

/** One request, with what can be done about it. */
export type RequestPage = {
  readonly frame: FrameOfPage
  readonly today: Day
  readonly locale: string
  readonly request: NamedRequest
  /** Whom the club has written down as this child's guardians. */
  readonly guardians: readonly Person[]
  /** Squads in whose list of players the child is set right. */
  readonly squadIds: readonly string[]
  /** Null: more time can be taken, up to `latest`. */
  readonly whyNotExtend: ReturnType<typeof whyNotExtend>
  readonly latest: Day
}

/** @throws AppError `notAllowed` or `notFound`. */
export async function loadRequest(
  viewer: Viewer,
  { requestId, now = new Date() }: { readonly requestId: string; readonly now?: Date },
): Promise<RequestPage> {
  demand(viewer, 'answerRequests', { kind: 'club' })
  return inClub(viewer.clubId, async (tx) => {
    const { club, today } = await loadClubDay(tx, now)
    const request = await getRequest(tx, requestId)
    await recordLook(tx, viewer, { page: 'request', playerId: request.playerId })
    const { holidays } = await getClubRights(tx)
    const child = (await listClubPlayers(tx)).find(({ id }) => id === request.playerId)
    return {
      frame: await loadFrame(tx, viewer, null),
      today,
      locale: club.locale,
      request,
      guardians: await listGuardiansOf(tx, request.playerId),
      squadIds: child?.squadIds ?? [],
      whyNotExtend: whyNotExtend(request, today),
      latest: dueDays(request.receivedOn, holidays).latest,
    }
  })
}
