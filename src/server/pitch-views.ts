import 'server-only'
import { accept, type Result } from '#common/result'
import { type ClubTx, inClub } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listPitchEvents } from '#data/pitch-events'
import { listPairs } from '#data/player-pairs'
import { listPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import { listRegister } from '#data/register-lines'
import { findPlan } from '#data/session-plans'
import type { Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import { namesApart } from '#fairness/book/names-apart'
import { planForHelper } from '#pitch/for-helper'
import type { PitchEvent } from '#pitch/pitch-event'
import type { KnownPlayer, PitchPack } from '#pitch/pitch-pack'
import { shortName } from '#pitch/short-name'
import { withAgreedSides } from '#planning/agreed-sides'
import { withAgreements } from '#planning/agreed-today'
import { pairsForgotten } from '#planning/player-pair'
import type { PracticePlan } from '#planning/practice-plan'
import { clubIdOf, openPitch, type PitchAsker, type PitchRefused } from '#server/pitch-asker'
import { loadAgreements } from '#server/plan-cast'
import { asOf } from '#squad/keeps-change'
import type { PlayerId } from '#squad/player'
import { policyInForce } from '#squad/policy'
import type { RegisterLine } from '#squad/register'
import { isMemberOn } from '#squad/squad'
import { tappedForHelper } from '#touchline/tapped-for-helper'

/** Everything a phone needs to run the practice without a signal. @throws AppError `notFound` or `notAllowed`. */
export async function loadPitchPack(
  asker: PitchAsker,
  { sessionId, now }: { readonly sessionId: string; readonly now: Date },
): Promise<Result<PitchPack, PitchRefused>> {
  return inClub(clubIdOf(asker), async (tx) => {
    const opened = await openPitch(tx, asker, { sessionId, now })
    if (!opened.ok) return opened
    const session = opened.value
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
    const players = await listPitchPlayers(tx, { session, plan, register, events })
    return accept({
      session: frameOf(session, squad.name),
      plan: plan && (isCoach ? await withWhatStands(tx, { plan, session }) : planForHelper(plan)),
      planVersion: stored?.version ?? 0,
      themeName: await themeNameOf(tx, plan),
      players: isCoach ? namesApart(players) : namesApart(players.map(withShortName)),
      policy: { restLimitTurns },
      register,
      viewer: isCoach
        ? { kind: 'coach', name: asker.viewer.name, mayReplan: true }
        : { kind: 'helper', name: asker.viewer?.name ?? 'Helper', mayReplan: false },
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

function frameOf(session: Session, squadName: string): PitchPack['session'] {
  const { id, squadId, day, title, startsAt, lengthSeconds, written } = session
  return { id, squadId, squadName, day, title, startsAt, lengthSeconds, written }
}

function withShortName<Named extends { readonly name: string }>(player: Named): Named {
  return { ...player, name: shortName(player.name) }
}

async function themeNameOf(tx: ClubTx, plan: PracticePlan | null): Promise<string | null> {
  const themeId = plan?.design.themeId
  return themeId ? ((await listThemes(tx)).find(({ id }) => id === themeId)?.name ?? null) : null
}

type Known = {
  readonly session: Session
  readonly plan: PracticePlan | null
  readonly register: readonly RegisterLine[]
  readonly events: readonly PitchEvent[]
}

/**
 * Members on the day, whoever is planned, and whoever the register has, under the names the book has for them. New
 * faces tapped at the pitch come with what was tapped.
 */
export async function listPitchPlayers(
  tx: ClubTx,
  { session, plan, register, events }: Known,
): Promise<readonly KnownPlayer[]> {
  const { day } = session
  const memberships = await listMemberships(tx, session.squadId)
  const isMember = (playerId: PlayerId) => isMemberOn(memberships, { playerId, day })
  const tapped = new Set(events.flatMap(({ deed }) => (deed.kind === 'guest' ? [deed.playerId] : [])))
  const ids = new Set([
    ...memberships.map(({ playerId }) => playerId).filter(isMember),
    ...(plan?.players ?? []).map(({ playerId }) => playerId),
    ...register.map(({ playerId }) => playerId),
  ])
  const players = await listPlayers(
    tx,
    [...ids].filter((id) => !tapped.has(id)),
  )
  const changes = await listKeepsChanges(
    tx,
    players.map(({ id }) => id),
  )
  return asOf(players, { changes, day }).map(({ id, name, keeps }) => ({
    id,
    name,
    keeps,
    isMember: isMember(id),
  }))
}
