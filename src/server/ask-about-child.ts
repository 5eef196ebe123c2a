import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { recordAudit } from '#data/audit'
import { countRequestsOn, listRequestsBy, recordRequest } from '#data/child-requests'
import { getClubRights } from '#data/club-rights'
import { listConsentsOf, type NamedConsent } from '#data/consents'
import { newId } from '#data/ids'
import { type ClubTx, inClub } from '#data/in-club'
import { getPlayer } from '#data/players'
import { type ChildRequest, dueDays, requestLimits } from '#rights/child-request'
import { dayInWords } from '#rights/day-in-words'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { recordLook } from '#server/record-look'
import type { AskInput } from '#server/rights-input'
import type { PlayerId } from '#squad/player'

/** What a guardian asked and agreed to about its child, as it stands. */
type OwnRights = {
  readonly requests: readonly ChildRequest[]
  readonly consents: readonly NamedConsent[]
}

/** In a transaction that serves the guardian. */
async function loadOwnRights(tx: ClubTx, viewer: Viewer, playerId: PlayerId): Promise<OwnRights> {
  const consents = await listConsentsOf(tx, playerId)
  return {
    requests: await listRequestsBy(tx, { playerId, askedById: viewer.personId }),
    consents: consents.filter(({ givenById }) => givenById === viewer.personId),
  }
}

/** The page on which a guardian asks about its child. */
export type AskPage = OwnRights & {
  readonly clubName: string
  readonly viewerName: string
  readonly askWhom: string
  readonly locale: string
  readonly today: Day
  readonly child: { readonly id: PlayerId; readonly name: string }
}

/** Nothing of another guardian's. @throws AppError `notAllowed` or `notFound`. */
export async function loadAskPage(
  viewer: Viewer,
  { playerId, now = new Date() }: { readonly playerId: PlayerId; readonly now?: Date },
): Promise<AskPage> {
  demand(viewer, 'askAboutChild', { kind: 'player', playerId, squadIds: [] })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { club, today } = await loadClubDay(tx, now)
      const { id, name } = await getPlayer(tx, playerId)
      await recordLook(tx, viewer, { page: 'familyAsk', playerId })
      return {
        clubName: club.name,
        viewerName: viewer.name,
        askWhom: (await getClubRights(tx)).askWhom,
        locale: club.locale,
        today,
        child: { id, name },
        ...(await loadOwnRights(tx, viewer, playerId)),
      }
    },
    { guardianId: viewer.personId },
  )
}

/** What a guardian asks about what is kept of its child. @throws AppError `notAllowed`. */
export async function askAboutChildOf(
  viewer: Viewer,
  { playerId, kind, text }: AskInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  demand(viewer, 'askAboutChild', { kind: 'player', playerId, squadIds: [] })
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { club, today } = await loadClubDay(tx, now)
      const askedById = viewer.personId
      if ((await countRequestsOn(tx, { askedById, day: today })) >= requestLimits.aDay)
        return refuse({
          path: '',
          message: `You have sent ${requestLimits.aDay} today already. Nothing of this one was sent. Send it tomorrow, or speak to the club.`,
        })
      const own = await listRequestsBy(tx, { playerId, askedById })
      if (own.some((one) => one.outcome === null && one.kind === kind && one.text === text))
        return refuse({
          path: '',
          message: 'You have sent the same already, and the club has yet to answer it.',
        })
      const { holidays } = await getClubRights(tx)
      const request = { id: newId(), playerId, kind, text, askedById, receivedOn: today }
      const { dueOn } = dueDays(today, holidays)
      await recordRequest(tx, { ...request, dueOn })
      const by = { personId: viewer.personId, at: now }
      const detail = { kind, playerId }
      await recordAudit(tx, {
        action: 'askAboutChild',
        objectKind: 'request',
        objectId: request.id,
        detail,
        by,
      })
      return saved(`Sent to the club. It is to answer by ${dayInWords(dueOn, club.locale)}.`)
    },
    { guardianId: viewer.personId },
  )
}
