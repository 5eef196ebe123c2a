import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import { inClub } from '#data/in-club'
import { findFormatOfSquad, listMatchFormats } from '#data/match-formats'
import { listPairs } from '#data/player-pairs'
import { listPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import { findMatchPlan } from '#data/session-plans'
import { getSquad } from '#data/squads'
import { namesApart } from '#fairness/book/names-apart'
import { shortNames } from '#planning/short-names'
import { loadClubDay } from '#server/club-day'
import { whyNoLineUp } from '#server/line-up-closed'
import { loadMatchCast } from '#server/match-cast'
import { loadFrame } from '#server/page-frame'
import { getSessionOfSquad } from '#server/session-of-squad'
import { policyInForce } from '#squad/policy'
import type { SquadId } from '#squad/squad'

type AtMatch = { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date }

/** Everything the page needs on which a match is planned. @throws AppError `notAllowed` or `notFound`. */
export async function loadLineUpPage(viewer: Viewer, { squadId, sessionId, now = new Date() }: AtMatch) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const squad = await getSquad(tx, squadId)
    const { today } = await loadClubDay(tx, now)
    const stored = await findMatchPlan(tx, sessionId)
    const register = await listRegister(tx, sessionId)
    const alsoIds = [...(stored?.plan.players ?? []), ...register].map(({ playerId }) => playerId)
    const policy = policyInForce(await listPolicies(tx), { ageLimit: squad.ageLimit, day: session.day })
    const pairs = await listPairs(tx, { squadId, from: session.day })
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      session,
      closed: await whyNoLineUp(tx, session),
      version: stored?.version ?? 0,
      plan: stored?.plan ?? null,
      players: await loadMatchCast(tx, { session, today, alsoIds: [...new Set(alsoIds)] }),
      formats: (await listMatchFormats(tx)).flatMap(({ isPutAway, format }) => (isPutAway ? [] : [format])),
      squadFormat: (await findFormatOfSquad(tx, squadId))?.format ?? null,
      mayArrangeFormats: may(viewer, 'changeFormats', { kind: 'club' }),
      register,
      pairs: pairs.filter((pair) => hasDay(pair, session.day)),
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
    demand(viewer, 'seeSquad', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const stored = await findMatchPlan(tx, sessionId)
    if (!stored) return null
    const { plan } = stored
    const { format, spells } = plan
    const players = await listPlayers(
      tx,
      plan.players.map(({ playerId }) => playerId),
    )
    const names = shortNames(namesApart(players))
    return {
      squadName: (await getSquad(tx, squadId)).name,
      day: session.day,
      startsAt: session.startsAt,
      title: session.title,
      place: session.place,
      periodSeconds: format.periodSeconds,
      isShortGames: format.isShortGames,
      spells,
      players: plan.players.map(({ playerId }) => ({ id: playerId, name: names.get(playerId) ?? 'Guest' })),
      mayPlan: may(viewer, 'planPractice', { kind: 'squad', squadId }),
    }
  })
}
