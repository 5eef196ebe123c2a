import 'server-only'
import type { Problem } from '#common/problem'
import { accept, type Result, refuse } from '#common/result'
import type { Day } from '#common/time'
import { listClosedDays } from '#data/closed-days'
import type { ClubTx } from '#data/in-club'
import { listSeasons } from '#data/seasons'
import { listSessions } from '#data/sessions'
import type { Weekly } from '#server/weeks-input'
import type { SquadId } from '#squad/squad'
import { type WeeklyDays, weeklyDays } from '#squad/weekly-days'

/** More than a season has weeks. */
const mostPractices = 60

/** Which practices would be added to the squad; refused where none, too many, or some outside a season. */
export async function findWeeklyDays(
  tx: ClubTx,
  { squadId, today, asked }: { readonly squadId: SquadId; readonly today: Day; readonly asked: Weekly },
): Promise<Result<WeeklyDays, Problem>> {
  const { firstDay, lastDay, weekday } = asked
  if (firstDay < today)
    return refuse({
      path: 'firstDay',
      message: `is over; begin with today, ${today}, or later. What was held already is entered one by one.`,
    })
  const season = (await listSeasons(tx)).find((one) => one.firstDay <= firstDay && firstDay <= one.lastDay)
  if (!season)
    return refuse({ path: 'firstDay', message: 'is in no season of the club; choose a day inside one' })
  if (lastDay > season.lastDay)
    return refuse({
      path: 'lastDay',
      message: `is after the season ${season.name}, which ends on ${season.lastDay}; write that day or an earlier one`,
    })
  const closed = await listClosedDays(tx, { squadId })
  const held = await listSessions(tx, {
    squadId,
    from: firstDay,
    to: lastDay,
    kind: 'practice',
    withCancelled: false,
  })
  const found = weeklyDays({ weekday, firstDay, lastDay, closed, taken: held.map(({ day }) => day) })
  if (found.add.length > mostPractices)
    return refuse({
      path: 'lastDay',
      message: `gives ${found.add.length} practices; ${mostPractices} at once at most would be right`,
    })
  return accept(found)
}
