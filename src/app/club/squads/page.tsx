import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { saveSquad } from '#server/club-actions'
import { loadClubSquads } from '#server/club-views'
import { getViewer } from '#server/viewer'
import { SquadsBody } from '#ui/club/squads-body'

const title = 'Squads'
export const metadata: Metadata = { title }

export default async function ClubSquadsPage() {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadClubSquads(viewer))
  return (
    <Shell frame={frame} tab="club" title={title}>
      <SquadsBody {...page} save={saveSquad} />
    </Shell>
  )
}
