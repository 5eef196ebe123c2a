import 'server-only'
import type { Viewer } from '#access/viewer'
import { listDesigns } from '#data/designs'
import { inClub } from '#data/in-club'
import { findPlan } from '#data/session-plans'
import { listThemes } from '#data/themes'
import { plannedAbout } from '#practice/planned-about'
import { loadPlanCast } from '#server/plan-cast'
import { whyNotPlanned } from '#server/plan-closed'
import { loadPlanningPage } from '#server/planning-page'
import { loadPrintedHead, loadPrintedNames } from '#server/printed-plan'
import type { SquadId } from '#squad/squad'

type AtSession = { readonly squadId: SquadId; readonly sessionId: string; readonly now?: Date }

/** Everything the page needs on which a practice is planned. @throws AppError `notAllowed` or `notFound`. */
export async function loadPlanPage(viewer: Viewer, { squadId, sessionId, now = new Date() }: AtSession) {
  return inClub(viewer.clubId, async (tx) => {
    const page = await loadPlanningPage(tx, viewer, { squadId, sessionId, now })
    const { session, today, policy } = page
    const stored = await findPlan(tx, sessionId)
    const alsoIds = stored?.plan.players.map(({ playerId }) => playerId) ?? []
    const cast = await loadPlanCast(tx, { session, today, alsoIds })
    return {
      ...page,
      closed: await whyNotPlanned(tx, session),
      version: stored?.version ?? 0,
      plan: stored?.plan ?? null,
      players: cast.players,
      themeShort: cast.themeShort,
      designs: plannedAbout(await listDesigns(tx), session),
      themes: (await listThemes(tx)).map(({ id, name, parentId, order }) => ({ id, name, parentId, order })),
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
    const head = await loadPrintedHead(tx, viewer, { squadId, sessionId })
    const stored = await findPlan(tx, sessionId)
    if (!stored) return null
    const { plan } = stored
    const nameOf = await loadPrintedNames(
      tx,
      plan.players.map(({ playerId }) => playerId),
    )
    return {
      ...head,
      name: plan.design.name,
      sides: plan.rules.keepsSides ? (plan.design.sides?.names ?? null) : null,
      rounds: plan.design.rounds,
      turns: plan.turns,
      proof: plan.proof.sentence,
      players: plan.players.map(({ playerId, side, present }) => ({
        id: playerId,
        name: nameOf(playerId),
        side: plan.rules.keepsSides && plan.design.sides ? side : null,
        present,
      })),
    }
  })
}
