import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { addPlayer } from '#server/player-actions'
import { loadPlayers } from '#server/players-views'
import { getViewer } from '#server/viewer'
import { PlayersBody } from '#ui/players/players-body'

export const metadata: Metadata = { title: 'Players' }

type PlayersPageProps = { readonly params: Promise<{ readonly squadId: string }> }

export default async function PlayersPage({ params }: PlayersPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const { frame, ...page } = await orNotFound(loadPlayers(viewer, { squadId }))
  return (
    <Shell frame={frame} tab="book" title={`Players: ${page.squad.name}`}>
      <PlayersBody {...page} add={addPlayer} />
    </Shell>
  )
}
