import 'server-only'
import type { Viewer } from '#access/viewer'
import { daysLater } from '#common/days-later'
import type { Problem } from '#common/problem'
import { type Result, refuse } from '#common/result'
import { recordAudit } from '#data/audit'
import { inClub } from '#data/in-club'
import { listKeepsChanges, recordKeepsChange } from '#data/keeps-changes'
import { listSquadIdsWith } from '#data/memberships'
import { changePlayer } from '#data/players'
import { type Done, saved } from '#server/action'
import { loadClubDay } from '#server/club-day'
import { countAnew, countingTimeoutMs, judgeAnew } from '#server/count-anew'
import { openPlayer } from '#server/open-player'
import type { AboutPlayerInput, KeepsInput } from '#server/player-input'
import { nextChangeAfter } from '#squad/keeps-change'

type Answer = Promise<Result<Done, Problem>>

/** A player's name, and whether it asks to keep goal. @throws AppError `notAllowed` or `notFound`. */
export async function changeAboutPlayerOf(
  viewer: Viewer,
  { squadId, playerId, name, wantsToKeep }: AboutPlayerInput,
  now = new Date(),
): Answer {
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      const player = await openPlayer(tx, viewer, { squadId, playerId, today })
      if (player.name === name && player.wantsToKeep === wantsToKeep)
        return refuse({ path: '', message: 'Nothing is different from what stands there already.' })
      await changePlayer(tx, playerId, { name, wantsToKeep })
      const by = { personId: viewer.personId, at: now }
      const detail = { isRenamed: player.name !== name, wantsToKeep }
      await recordAudit(tx, {
        action: 'changePlayer',
        objectKind: 'player',
        objectId: playerId,
        detail,
        by,
      })
      if (player.wantsToKeep !== wantsToKeep) {
        const squadIds = await listSquadIdsWith(tx, { playerId, from: today })
        await judgeAnew(tx, { squadIds, from: today, today, now })
      }
      return saved('Saved.')
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/**
 * Whether a player may be put in goal from a day on. What was due before that day stays; from there on sessions are
 * counted anew. @throws AppError `notAllowed` or `notFound`.
 */
export async function changeKeepsOf(
  viewer: Viewer,
  { squadId, playerId, keeps, day }: KeepsInput,
  now = new Date(),
): Answer {
  return inClub(
    viewer.clubId,
    async (tx) => {
      const { today } = await loadClubDay(tx, now)
      const { name } = await openPlayer(tx, viewer, { squadId, playerId, today })
      if (day > today)
        return refuse({
          path: 'day',
          message: `has not come yet; write it on that day, or choose ${today} or an earlier day`,
        })
      const by = { personId: viewer.personId, at: now }
      if (!(await recordKeepsChange(tx, { playerId, day, keeps, today, by })))
        return refuse({
          path: 'keeps',
          message: `${name} ${keeps ? 'may be put in goal' : 'asks not to be put in goal'} on ${day} already; choose the other answer, or another day`,
        })
      const detail = { day, keeps }
      await recordAudit(tx, { action: 'changeKeeps', objectKind: 'player', objectId: playerId, detail, by })
      const next = nextChangeAfter(await listKeepsChanges(tx, [playerId]), { playerId, day })
      const counted = await countAnew(tx, {
        squadIds: await listSquadIdsWith(tx, { playerId, from: day }),
        from: day,
        to: next ? daysLater(next, -1) : undefined,
        today,
        now,
      })
      const holds = next ? `from ${day} to ${daysLater(next, -1)}` : `from ${day} on`
      return saved(
        `${name} ${keeps ? 'may be put in goal' : 'is not to be put in goal'} ${holds}. ${countedSentence(counted)}`,
      )
    },
    { timeoutMs: countingTimeoutMs },
  )
}

/** Of sessions that were counted anew because something about a player changed. */
export function countedSentence(count: number): string {
  if (count === 0) return 'No session that is written down is touched by it.'
  return `${count === 1 ? 'One written session was' : `${count} written sessions were`} counted anew.`
}
