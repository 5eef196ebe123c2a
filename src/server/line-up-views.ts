import 'server-only'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { inClub } from '#data/in-club'
import { findFormatOfSquad, listMatchFormats } from '#data/match-formats'
import { findMatchPlan } from '#data/session-plans'
import { whyNoLineUp } from '#server/line-up-closed'
import { loadMatchCast } from '#server/match-cast'
import { loadPlanningPage } from '#server/planning-page'
import { loadPrintedHead, loadPrintedNames } from '#server/printed-plan'
import type { SquadId } from '#squad/squad'

type AtMatch = { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date }

/** Everything the page needs on which a match is planned. @throws AppError `notAllowed` or `notFound`. */
export async function loadLineUpPage(viewer: Viewer, { squadId, sessionId, now = new Date() }: AtMatch) {
  return inClub(viewer.clubId, async (tx) => {
    const page = await loadPlanningPage(tx, viewer, { squadId, sessionId, now })
    const { session, today, register, policy } = page
    const stored = await findMatchPlan(tx, sessionId)
    const alsoIds = [...(stored?.plan.players ?? []), ...register].map(({ playerId }) => playerId)
    return {
      ...page,
      closed: await whyNoLineUp(tx, session),
      version: stored?.version ?? 0,
      plan: stored?.plan ?? null,
      players: await loadMatchCast(tx, { session, today, alsoIds: [...new Set(alsoIds)] }),
      formats: (await listMatchFormats(tx)).flatMap(({ isPutAway, format }) => (isPutAway ? [] : [format])),
      squadFormat: (await findFormatOfSquad(tx, squadId))?.format ?? null,
      mayArrangeFormats: may(viewer, 'changeFormats', { kind: 'club' }),
      policy: {
        leastMatchShare: policy.leastMatchShare,
        toleranceSeconds: policy.toleranceSeconds,
        toleranceShare: policy.toleranceShare,
      },
    }
  })
}

/**
 * A line-up to print: who is on when, under short names. Nothing of pairs, what is owed or reasons leaves the server with
 * it. Null where nothing is planned. @throws AppError `notAllowed` or `notFound`.
 */
export async function loadLineUpPrint(viewer: Viewer, { squadId, sessionId }: AtMatch) {
  return inClub(viewer.clubId, async (tx) => {
    const head = await loadPrintedHead(tx, viewer, { squadId, sessionId })
    const stored = await findMatchPlan(tx, sessionId)
    if (!stored) return null
    const { players, format, spells } = stored.plan
    const playerIds = players.map(({ playerId }) => playerId)
    const nameOf = await loadPrintedNames(tx, playerIds)
    return {
      ...head,
      periodSeconds: format.periodSeconds,
      isShortGames: format.isShortGames,
      spells,
      players: playerIds.map((id) => ({ id, name: nameOf(id) })),
    }
  })
}
