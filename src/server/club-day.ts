import 'server-only'
import type { Day } from '#common/time'
import { type Club, getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { todayOf } from '#server/today'

/** The club, and the day it is there. */
export async function loadClubDay(
  tx: ClubTx,
  now = new Date(),
): Promise<{ readonly club: Club; readonly today: Day }> {
  const club = await getClub(tx)
  return { club, today: todayOf(club, now) }
}
