import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { allDays } from '#common/time'
import { recordAudit } from '#data/audit'
import { newId } from '#data/ids'
import { inClub } from '#data/in-club'
import { listAway, recordAway, removeAway } from '#data/player-away'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { openPlayer } from '#server/open-player'
import type { AwayInput, RemoveAwayInput } from '#server/weeks-input'

type Answer = Promise<Result<Done, Problem>>

/** Far more than anybody knows ahead. */
const mostSpans = 50

/** Days on which a player is known to be away; no reason is asked for. @throws AppError `notAllowed` or `notFound`. */
export async function addAwayOf(
  viewer: Viewer,
  { squadId, playerId, firstDay, lastDay }: AwayInput,
  now = new Date(),
): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const { name } = await openPlayer(tx, viewer, { squadId, playerId, today })
    if (lastDay < today)
      return refuse({
        path: 'lastDay',
        message: 'is over; who was there on a day that is past stands in its practice',
      })
    const before = await listAway(tx, { playerIds: [playerId], ...allDays })
    if (before.some((one) => one.firstDay <= firstDay && lastDay <= one.lastDay))
      return refuse({ path: 'firstDay', message: 'these days are in the list already' })
    if (before.length >= mostSpans)
      return refuse({ path: '', message: `${mostSpans} lines at most fit here. Take out old ones first.` })
    await recordAway(tx, { id: newId(), playerId, firstDay, lastDay })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'changeAway', objectKind: 'player', objectId: playerId, by })
    return saved(`Saved. Plans of the weeks ahead do not count on ${name} on these days.`)
  })
}

/** Takes them out again. @throws AppError `notAllowed` or `notFound`. */
export async function removeAwayOf(
  viewer: Viewer,
  { squadId, playerId, awayId }: RemoveAwayInput,
  now = new Date(),
): Answer {
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    await openPlayer(tx, viewer, { squadId, playerId, today })
    if (!(await removeAway(tx, { id: awayId, playerId })))
      return refuse({ path: '', message: 'These days are not in the list any more. Reload the page.' })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'changeAway', objectKind: 'player', objectId: playerId, by })
    return saved('Taken out.')
  })
}
