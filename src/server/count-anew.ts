import 'server-only'
import { allDays, type Day } from '#common/time'
import type { ClubTx } from '#data/in-club'
import { listSeasons } from '#data/seasons'
import { listSessions } from '#data/sessions'
import { rebuildSessions } from '#server/rebuild'
import { refreshFlags } from '#server/refresh-flags'
import type { SquadId } from '#squad/squad'

/** Counting a season of a few squads anew may take this long; then all of it is undone. */
export const countingTimeoutMs = 120_000

type Judged = {
  readonly squadIds: readonly SquadId[]
  /** First day that anything changed for. */
  readonly from: Day
  readonly today: Day
  readonly now: Date
}

/**
 * Counts the sessions of squads anew from one day to another, both included, and judges their flags anew; inside the
 * transaction of whatever changed. How many of the sessions were written down.
 */
export async function countAnew(
  tx: ClubTx,
  { to = allDays.to, ...at }: Judged & { readonly to?: Day },
): Promise<number> {
  let written = 0
  for (const squadId of at.squadIds.toSorted()) {
    const sessions = await listSessions(tx, { squadId, from: at.from, to })
    await rebuildSessions(tx, squadId, sessions)
    written += sessions.filter((one) => one.written !== 'notWritten' && !one.isCancelled).length
  }
  await judgeAnew(tx, at)
  return written
}

/** Judges the flags of squads anew, in every season that has begun and was not over before the day. */
export async function judgeAnew(tx: ClubTx, { squadIds, from, today, now }: Judged): Promise<void> {
  const seasons = await listSeasons(tx)
  const begun = seasons.filter(({ firstDay, lastDay }) => lastDay >= from && firstDay <= today)
  for (const squadId of squadIds.toSorted()) {
    for (const { id: seasonId } of begun) await refreshFlags(tx, { squadId, seasonId, today, now })
  }
}
