import 'server-only'
import type { Viewer } from '#access/viewer'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listLineWishes, setLineWishes } from '#data/line-wishes'
import { fieldLines, type LineWishes, noWishes } from '#match/format/line-wish'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { openPlayer } from '#server/open-player'
import type { LinesInput } from '#server/player-input'

/**
 * Which lines a player likes, is learning, or is not to be put in yet. Line-ups planned from now on heed it; those that are
 * saved stay. @throws AppError `notAllowed` or `notFound`.
 */
export async function changeLinesOf(
  viewer: Viewer,
  { squadId, playerId, back, middle, forward }: LinesInput,
  now = new Date(),
): Promise<Result<Done, Problem>> {
  const wishes: LineWishes = { back, middle, forward }
  return inClub(viewer.clubId, async (tx) => {
    const { today } = await loadClubDay(tx, now)
    const { name } = await openPlayer(tx, viewer, { squadId, playerId, today })
    const before = (await listLineWishes(tx, [playerId])).get(playerId) ?? noWishes
    if (fieldLines.every((line) => wishes[line] === before[line]))
      return refuse({ path: '', message: 'Nothing is different from what stands there already.' })
    if (fieldLines.every((line) => wishes[line] === 'notYet'))
      return refuse({
        path: '',
        message: `Leaves ${name} no line out of goal. Choose another answer for at least one of the three.`,
      })
    await setLineWishes(tx, { playerId, wishes })
    const by = { personId: viewer.personId, at: now }
    await recordAudit(tx, { action: 'changeLines', objectKind: 'player', objectId: playerId, by })
    return saved('Saved. Line-ups made from now on heed it.')
  })
}
