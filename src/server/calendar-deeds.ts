import 'server-only'
import { z } from 'zod'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { recordCalendarFeed, revokeCalendarFeeds } from '#data/calendar-feeds'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { type Done, saved, savedWithLink } from '#server/action'
import { listSquadsFor } from '#server/calendar-scope'
import { hashOfSecret } from '#server/helper-secret'
import { newSecret, textOfCode } from '#server/link-code'
import { qrCodeOf } from '#server/qr-code'
import { isOnlyThisMachine } from '#server/request-address'
import type { SquadId } from '#squad/squad'

type Answer = Promise<Result<Done, Problem>>

const ofSquad = /^squad-([0-9a-f-]{36})$/

/** Boxes named `squad-<id>`. None ticked means all of them, whichever they are by then. */
export const makeCalendarInput = z.record(z.string(), z.unknown()).transform((fields) => ({
  squadIds: Object.keys(fields).flatMap((name) => ofSquad.exec(name)?.[1] ?? []),
}))

type NewCalendar = {
  readonly squadIds: readonly SquadId[]
  /** What the book is reached under. */
  readonly address: string
  readonly now?: Date
}

/** An address for the viewer's own calendar program. The one before opens nothing from now on. */
export async function makeCalendarOf(
  viewer: Viewer,
  { squadIds, address, now = new Date() }: NewCalendar,
): Answer {
  const open = (await listSquadsFor(viewer)).map(({ id }) => id)
  if (open.length === 0)
    return refuse({ path: '', message: 'No squad is yours here, so there would be nothing in it.' })
  const strange = squadIds.find((id) => !open.includes(id))
  if (strange !== undefined)
    return refuse({ path: '', message: 'A squad that was ticked is not yours any more. Reload the page.' })
  const { clubId, personId } = viewer
  const [feedId, secret] = [newId(), newSecret()]
  await inClub(clubId, async (tx) => {
    const replaced = await revokeCalendarFeeds(tx, { personId, at: now })
    await recordCalendarFeed(tx, {
      ...{ id: feedId, personId, squadIds, madeAt: now },
      secretHash: hashOfSecret(secret),
    })
    await recordAudit(tx, {
      action: 'makeCalendar',
      objectKind: 'person',
      objectId: personId,
      detail: { feedId, replaced },
      by: { personId, at: now },
    })
  })
  const href = `${address}/calendar/${textOfCode({ clubId, linkId: feedId, secret })}.ics`
  const reach = isOnlyThisMachine(address)
    ? ' It is understood on this machine alone: open the book under its address in the network to make one for a phone.'
    : ''
  return savedWithLink(`Here is the address, shown this once: put it into your calendar now.${reach}`, {
    href,
    code: qrCodeOf(href),
  })
}

/** From now on the address opens nothing; there is no other's to take back. */
export async function takeBackCalendarOf(viewer: Viewer, now = new Date()): Answer {
  const { clubId, personId } = viewer
  return inClub(clubId, async (tx) => {
    const count = await revokeCalendarFeeds(tx, { personId, at: now })
    if (count === 0) return refuse({ path: '', message: 'There is no address any more. Reload the page.' })
    await recordAudit(tx, {
      action: 'takeBackCalendar',
      objectKind: 'person',
      objectId: personId,
      detail: { count },
      by: { personId, at: now },
    })
    return saved('Taken back.')
  })
}
