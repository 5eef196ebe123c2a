import 'server-only'
import { may, mayEver } from '#access/may'
import type { Viewer, ViewerRole } from '#access/viewer'
import { getClub } from '#data/clubs'
import { listChildrenOf } from '#data/guardianships'
import type { ClubTx } from '#data/in-club'
import { listSquads } from '#data/squads'
import type { Squad, SquadId } from '#squad/squad'

const squadTabs = ['today', 'book', 'sessions', 'themes', 'ahead', 'flags'] as const
type Tab = (typeof squadTabs)[number] | 'families' | 'review' | 'policy' | 'files' | 'club'

/** What surrounds a page for this viewer: only squads and tabs that are its own to open. */
export type FrameOfPage = {
  readonly clubName: string
  readonly viewerName: string
  readonly viewerRole: ViewerRole
  /** In age order. */
  readonly squads: readonly Squad[]
  readonly squadId: SquadId | null
  readonly tabs: readonly Tab[]
  /** The viewer's own children, for a coach who is a parent too. */
  readonly children: readonly { readonly id: string; readonly name: string }[]
}

/** `squadId` null: a page of the club; the tabs then lead to the first squad. */
export async function loadFrame(tx: ClubTx, viewer: Viewer, squadId: SquadId | null): Promise<FrameOfPage> {
  const club = await getClub(tx)
  const squads = (await listSquads(tx)).filter(({ id }) =>
    may(viewer, 'seeSquad', { kind: 'squad', squadId: id }),
  )
  return {
    clubName: club.name,
    viewerName: viewer.name,
    viewerRole: viewer.role,
    squads,
    squadId: squadId ?? squads[0]?.id ?? null,
    tabs: tabsOf(viewer),
    children: viewer.playerIds.length === 0 ? [] : await loadChildren(tx, viewer),
  }
}

async function loadChildren(tx: ClubTx, viewer: Viewer): Promise<FrameOfPage['children']> {
  return (await listChildrenOf(tx, viewer.personId)).map(({ id, name }) => ({ id, name }))
}

function tabsOf(viewer: Viewer): readonly Tab[] {
  const tabs: Tab[] = mayEver(viewer, 'seeSquad') ? [...squadTabs] : []
  if (mayEver(viewer, 'confirmFamilyPage')) tabs.push('families')
  if (mayEver(viewer, 'seeReview')) tabs.push('review')
  if (mayEver(viewer, 'seePolicy')) tabs.push('policy')
  if (mayEver(viewer, 'importFiles') || mayEver(viewer, 'exportFiles')) tabs.push('files')
  if (mayEver(viewer, 'arrangeClub')) tabs.push('club')
  return tabs
}
