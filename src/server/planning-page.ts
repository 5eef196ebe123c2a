import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { hasDay } from '#common/dated'
import type { ClubTx } from '#data/in-club'
import { listPairs } from '#data/player-pairs'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import { getSquad } from '#data/squads'
import { loadClubDay } from '#server/club-day'
import { loadFrame } from '#server/page-frame'
import { getSessionOfSquad } from '#server/session-of-squad'
import { policyInForce } from '#squad/policy'
import type { SquadId } from '#squad/squad'

/** What planning needs of a session, practice or match, of whichever kind. @throws AppError `notAllowed` or `notFound`. */
export async function loadPlanningPage(
  tx: ClubTx,
  viewer: Viewer,
  { squadId, sessionId, now }: { readonly squadId: SquadId; readonly sessionId: string; readonly now: Date },
) {
  demand(viewer, 'planPractice', { kind: 'squad', squadId })
  const session = await getSessionOfSquad(tx, { squadId, sessionId })
  const squad = await getSquad(tx, squadId)
  const { today } = await loadClubDay(tx, now)
  const policies = await listPolicies(tx)
  const pairs = await listPairs(tx, { squadId, from: session.day })
  return {
    frame: await loadFrame(tx, viewer, squadId),
    squad,
    today,
    session,
    register: await listRegister(tx, sessionId),
    pairs: pairs.filter((pair) => hasDay(pair, session.day)),
    policy: policyInForce(policies, { ageLimit: squad.ageLimit, day: session.day }),
  }
}
