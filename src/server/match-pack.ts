import 'server-only'
import { getClub } from '#data/clubs'
import type { ClubTx } from '#data/in-club'
import { listMatchEvents } from '#data/pitch-events'
import { listPairs } from '#data/player-pairs'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import type { Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { namesApart } from '#fairness/book/names-apart'
import type { MatchPlan } from '#lineup/match-plan'
import { pairsForgotten } from '#planning/player-pair'
import { loadMatchFrame } from '#server/match-frame'
import type { PitchAsker } from '#server/pitch-asker'
import { frameOf, listPitchPlayers, viewerOf, withShortName } from '#server/pitch-players'
import { policyInForce } from '#squad/policy'
import type { MatchPack } from '#touchline/match-pack'
import { formatForHelper, matchPlanForHelper } from '#touchline/match-plan-for-helper'
import { tappedForHelper } from '#touchline/tapped-for-helper'

/** Everything a phone needs beside one match, which is open to the asker. */
export async function loadMatchPack(
  tx: ClubTx,
  asker: PitchAsker,
  { session, now }: { readonly session: Session; readonly now: Date },
): Promise<MatchPack> {
  const squad = await getSquad(tx, session.squadId)
  const { plan, planVersion, format } = await loadMatchFrame(tx, session)
  const register = await listRegister(tx, session.id)
  const { events, cursor } = await listMatchEvents(tx, { sessionId: session.id })
  const policies = await listPolicies(tx)
  const { leastMatchShare } = policyInForce(policies, { ageLimit: squad.ageLimit, day: session.day })
  const planned = plan?.players.map(({ playerId }) => playerId) ?? []
  const players = await listPitchPlayers(tx, { session, planned, register, events })
  const isCoach = asker.kind === 'coach'
  return {
    kind: 'match',
    session: frameOf(session, squad.name),
    plan: plan && (isCoach ? await withPairs(tx, { plan, session }) : matchPlanForHelper(plan)),
    planVersion,
    format: isCoach ? format : formatForHelper(format),
    players: isCoach ? namesApart(players) : namesApart(players.map(withShortName)),
    policy: { leastMatchShare: isCoach ? leastMatchShare : 0 },
    countsGoals: (await getClub(tx)).countsGoals,
    register,
    viewer: viewerOf(asker),
    serverNow: now.getTime(),
    events: isCoach ? events : events.map(tappedForHelper),
    cursor,
  }
}

/** A pair is kept apart also where it was noted after the plan was made. */
async function withPairs(
  tx: ClubTx,
  { plan, session: { squadId, day } }: { readonly plan: MatchPlan; readonly session: Session },
): Promise<MatchPlan> {
  const pairs = await listPairs(tx, { squadId, from: day })
  return { ...plan, apart: [...plan.apart, ...pairsForgotten(plan, { pairs, day })] }
}
