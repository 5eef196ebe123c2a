import 'server-only'
import { accept, type Result } from '#common/result'
import { type ClubTx, inClub } from '#data/in-club'
import { listPitchEvents } from '#data/pitch-events'
import { listPairs } from '#data/player-pairs'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import { findPlan } from '#data/session-plans'
import type { Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import { namesApart } from '#fairness/book/names-apart'
import { planForHelper } from '#pitch/for-helper'
import type { PitchPack } from '#pitch/pitch-pack'
import { withAgreedSides } from '#planning/agreed-sides'
import { withAgreements } from '#planning/agreed-today'
import { pairsForgotten } from '#planning/player-pair'
import type { PracticePlan } from '#planning/practice-plan'
import { loadMatchPack } from '#server/match-pack'
import { clubIdOf, openPitch, type PitchAsker, type PitchRefused } from '#server/pitch-asker'
import { frameOf, listPitchPlayers, viewerOf, withShortName } from '#server/pitch-players'
import { loadAgreements } from '#server/plan-cast'
import { policyInForce } from '#squad/policy'
import type { MatchPack } from '#touchline/match-pack'
import { tappedForHelper } from '#touchline/tapped-for-helper'

/** Everything a phone needs to run the practice, or beside the match, without a signal. @throws AppError `notFound` or `notAllowed`. */
export async function loadPitchPack(
  asker: PitchAsker,
  { sessionId, now }: { readonly sessionId: string; readonly now: Date },
): Promise<Result<PitchPack | MatchPack, PitchRefused>> {
  return inClub(clubIdOf(asker), async (tx) => {
    const opened = await openPitch(tx, asker, { sessionId, now })
    if (!opened.ok) return opened
    const session = opened.value
    if (session.kind === 'match') return accept(await loadMatchPack(tx, asker, { session, now }))
    const squad = await getSquad(tx, session.squadId)
    const stored = await findPlan(tx, sessionId)
    const register = await listRegister(tx, sessionId)
    const { events, cursor } = await listPitchEvents(tx, { sessionId })
    const { restLimitTurns } = policyInForce(await listPolicies(tx), {
      ageLimit: squad.ageLimit,
      day: session.day,
    })
    const plan = stored?.plan ?? null
    const isCoach = asker.kind === 'coach'
    const planned = plan?.players.map(({ playerId }) => playerId) ?? []
    const players = await listPitchPlayers(tx, { session, planned, register, events })
    return accept({
      session: frameOf(session, squad.name),
      plan: plan && (isCoach ? await withWhatStands(tx, { plan, session }) : planForHelper(plan)),
      planVersion: stored?.version ?? 0,
      themeName: await themeNameOf(tx, plan),
      players: isCoach ? namesApart(players) : namesApart(players.map(withShortName)),
      policy: { restLimitTurns },
      register,
      viewer: viewerOf(asker),
      serverNow: now.getTime(),
      events: isCoach ? events : events.map(tappedForHelper),
      cursor,
    })
  })
}

/** A pair is kept apart, and what is agreed with a single child kept, also where it was noted after the plan was made. */
async function withWhatStands(
  tx: ClubTx,
  { plan, session }: { readonly plan: PracticePlan; readonly session: Session },
): Promise<PracticePlan> {
  const { squadId, day } = session
  const pairs = await listPairs(tx, { squadId, from: day })
  const playerIds = plan.players.map(({ playerId }) => playerId)
  const agreements = await loadAgreements(tx, { playerIds, day })
  const agreed = withAgreedSides(withAgreements(plan, (id) => agreements.get(id) ?? []))
  return {
    ...plan,
    players: agreed.players,
    apart: [...plan.apart, ...pairsForgotten(plan, { pairs, day })],
  }
}

async function themeNameOf(tx: ClubTx, plan: PracticePlan | null): Promise<string | null> {
  const themeId = plan?.design.themeId
  return themeId ? ((await listThemes(tx)).find(({ id }) => id === themeId)?.name ?? null) : null
}
