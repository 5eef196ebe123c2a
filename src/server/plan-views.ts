import 'server-only'
import { demand } from '#access/demand'
import { may } from '#access/may'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import { listDesigns } from '#data/designs'
import { inClub } from '#data/in-club'
import { listPairs } from '#data/player-pairs'
import { listPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import { findPlan } from '#data/session-plans'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import { namesApart } from '#fairness/book/names-apart'
import { shortNames } from '#planning/short-names'
import { loadClubDay } from '#server/club-day'
import { loadFrame } from '#server/page-frame'
import { loadPlanCast } from '#server/plan-cast'
import { whyNotPlanned } from '#server/plan-closed'
import { getSessionOfSquad } from '#server/session-of-squad'
import { policyInForce } from '#squad/policy'
import type { SquadId } from '#squad/squad'

type AtSession = { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date }

/** Everything the page needs on which a practice is planned. @throws AppError `notAllowed` or `notFound`. */
export async function loadPlanPage(viewer: Viewer, { squadId, sessionId, now = new Date() }: AtSession) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'planPractice', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const squad = await getSquad(tx, squadId)
    const { today } = await loadClubDay(tx, now)
    const stored = await findPlan(tx, sessionId)
    const alsoIds = stored?.plan.players.map(({ playerId }) => playerId) ?? []
    const cast = await loadPlanCast(tx, { session, today, alsoIds })
    const policy = policyInForce(await listPolicies(tx), { ageLimit: squad.ageLimit, day: session.day })
    const pairs = await listPairs(tx, { squadId, from: session.day })
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      today,
      session,
      closed: await whyNotPlanned(tx, session),
      version: stored?.version ?? 0,
      plan: stored?.plan ?? null,
      players: cast.players,
      themeShort: cast.themeShort,
      register: await listRegister(tx, sessionId),
      designs: await listDesigns(tx),
      themes: (await listThemes(tx)).map(({ id, name, parentId, order }) => ({ id, name, parentId, order })),
      pairs: pairs.filter((pair) => hasDay(pair, session.day)),
      policy: {
        toleranceSeconds: policy.toleranceSeconds,
        toleranceShare: policy.toleranceShare,
        restLimitTurns: policy.restLimitTurns,
        goalShareLimit: policy.goalShareLimit,
      },
    }
  })
}

/**
 * The sheet of a practice to print: who is where in which turn, under short names. Nothing of pairs, limits, differences
 * or reasons leaves the server with it. @throws AppError `notAllowed` or `notFound`, also where nothing is planned yet.
 */
export async function loadPlanSheet(viewer: Viewer, { squadId, sessionId }: AtSession) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'seeSquad', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const stored = await findPlan(tx, sessionId)
    if (!stored) return null
    const { plan } = stored
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
      name: plan.design.name,
      sides: plan.rules.keepsSides ? (plan.design.sides?.names ?? null) : null,
      rounds: plan.design.rounds,
      turns: plan.turns,
      proof: plan.proof.sentence,
      players: plan.players.map(({ playerId, side, present }) => ({
        id: playerId,
        name: names.get(playerId) ?? 'Guest',
        side: plan.rules.keepsSides && plan.design.sides ? side : null,
        present,
      })),
      mayPlan: may(viewer, 'planPractice', { kind: 'squad', squadId }),
    }
  })
}
