import 'server-only'
import type { ClubTx } from '#data/in-club'
import { listKeepsChanges } from '#data/keeps-changes'
import { listMemberships } from '#data/memberships'
import { listPlayers } from '#data/players'
import type { Session } from '#data/sessions'
import type { KnownPlayer, PitchPack, PitchViewer } from '#pitch/pitch-pack'
import { shortName } from '#pitch/short-name'
import type { PitchAsker } from '#server/pitch-asker'
import { asOf } from '#squad/keeps-change'
import type { PlayerId } from '#squad/player'
import type { RegisterLine } from '#squad/register'
import { isMemberOn } from '#squad/squad'
import type { TappedEvent } from '#touchline/tapped-event'

export function frameOf(session: Session, squadName: string): PitchPack['session'] {
  const { id, squadId, day, title, startsAt, lengthSeconds, written } = session
  return { id, squadId, squadName, day, title, startsAt, lengthSeconds, written }
}

export function withShortName<Named extends { readonly name: string }>(player: Named): Named {
  return { ...player, name: shortName(player.name) }
}

export function viewerOf(asker: PitchAsker): PitchViewer {
  return asker.kind === 'coach'
    ? { kind: 'coach', name: asker.viewer.name, mayReplan: true }
    : { kind: 'helper', name: asker.viewer?.name ?? 'Helper', mayReplan: false }
}

type Known = {
  readonly session: Session
  /** Whom the plan counts on. */
  readonly planned: readonly PlayerId[]
  readonly register: readonly RegisterLine[]
  readonly events: readonly TappedEvent[]
}

/**
 * Members on the day, whoever is planned, and whoever the register has, under the names the book has for them. New
 * faces tapped at the pitch come with what was tapped.
 */
export async function listPitchPlayers(
  tx: ClubTx,
  { session, planned, register, events }: Known,
): Promise<readonly KnownPlayer[]> {
  const { day } = session
  const memberships = await listMemberships(tx, session.squadId)
  const isMember = (playerId: PlayerId) => isMemberOn(memberships, { playerId, day })
  const tapped = new Set(events.flatMap(({ deed }) => (deed.kind === 'guest' ? [deed.playerId] : [])))
  const ids = new Set([
    ...memberships.map(({ playerId }) => playerId).filter(isMember),
    ...planned,
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
