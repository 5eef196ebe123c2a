import 'server-only'
import { demand } from '#access/demand'
import type { Viewer } from '#access/viewer'
import { AppError } from '#common/app-error'
import { listEveryDesign } from '#data/designs'
import { inClub } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listSquadPlayers } from '#data/players'
import { listPolicies } from '#data/policies'
import type { Session } from '#data/sessions'
import { getSquad } from '#data/squads'
import { listThemes } from '#data/themes'
import { getVersion } from '#data/written-history'
import { loadWritten, type WrittenSession } from '#data/written-sessions'
import { namesApart } from '#fairness/book/names-apart'
import { plannedAbout } from '#practice/planned-about'
import { eventsThatStand } from '#practice/replay'
import { loadClubDay } from '#server/club-day'
import { loadFrame } from '#server/page-frame'
import { getSessionOfSquad } from '#server/session-of-squad'
import { whyNotWritable } from '#server/why-not-writable'
import { turnsThatStand } from '#server/write-practice'
import { asOf } from '#squad/keeps-change'
import type { Player } from '#squad/player'
import { policyInForce } from '#squad/policy'
import { isMemberOn, type Membership, type SquadId } from '#squad/squad'

/** A player who can be written into a session. */
export type WritablePlayer = {
  readonly id: string
  readonly name: string
  readonly keeps: boolean
  readonly isMember: boolean
  /** Has a row of its own from the start: a member of that day, or somebody already written there. */
  readonly isExpected: boolean
}

/** Everything the page needs on which a session is typed in or corrected. */
export async function loadWritingPage(
  viewer: Viewer,
  { squadId, sessionId }: { readonly squadId: SquadId; readonly sessionId: string },
) {
  return inClub(viewer.clubId, async (tx) => {
    demand(viewer, 'writeSession', { kind: 'squad', squadId })
    const session = await getSessionOfSquad(tx, { squadId, sessionId })
    const [written] = await loadWritten(tx, [session])
    if (!written) throw new AppError('notFound', `no session ${sessionId}`)
    const squad = await getSquad(tx, squadId)
    const policies = await listPolicies(tx)
    const memberships = await listMemberships(tx, squadId)
    const players = await listSquadPlayers(tx, squadId)
    const changes = await listKeepsChanges(
      tx,
      players.map(({ id }) => id),
    )
    return {
      frame: await loadFrame(tx, viewer, squadId),
      squad,
      session,
      version: await getVersion(tx, sessionId),
      closed: whyNotWritable(session, (await loadClubDay(tx)).today),
      players: writablePlayers(namesApart(asOf(players, { changes, day: session.day })), {
        session,
        memberships,
        written,
      }),
      register: written.register,
      ...standingOf(written),
      // One that is put away is offered where it was used.
      designs:
        session.kind === 'practice'
          ? plannedAbout(
              (await listEveryDesign(tx)).filter(
                ({ id, isPutAway }) => !isPutAway || id === session.designId,
              ),
              session,
            )
          : [],
      themes: (await listThemes(tx)).map(({ id, name }) => ({ id, name })),
      middleAttackShare: policyInForce(policies, { ageLimit: squad.ageLimit, day: session.day })
        .middleAttackShare,
    }
  })
}

function writablePlayers(
  players: readonly Player[],
  at: {
    readonly session: Session
    readonly memberships: readonly Membership[]
    readonly written: WrittenSession
  },
): readonly WritablePlayer[] {
  const registered = new Set(at.written.register.map(({ playerId }) => playerId))
  return players.map(({ id, name, keeps }) => {
    const isMember = isMemberOn(at.memberships, { playerId: id, day: at.session.day })
    return { id, name, keeps, isMember, isExpected: isMember || registered.has(id) }
  })
}

/** What stands of a session: its turns and passes with their events, or its spells. */
function standingOf(written: WrittenSession) {
  if (written.kind === 'match') return { turns: [], passes: [], spells: written.match.spells }
  const passes = eventsThatStand(written.events).flatMap((event) =>
    event.kind === 'passed' ? [{ eventId: event.id, playerId: event.playerId, role: event.role }] : [],
  )
  return { turns: turnsThatStand(written.events), passes, spells: [] }
}
