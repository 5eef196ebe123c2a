import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { saveSeason } from '#server/club-actions'
import { loadClubSeasons } from '#server/club-views'
import { getViewer } from '#server/viewer'
import { addClubClosedDays, removeClubClosedDays } from '#server/weeks-actions'
import { SeasonsBody } from '#ui/club/seasons-body'

const title = 'Seasons and terms'
export const metadata: Metadata = { title }

export default async function ClubSeasonsPage() {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadClubSeasons(viewer))
  return (
    <Shell frame={frame} tab="club" title={title}>
      <SeasonsBody
        {...page}
        save={saveSeason}
        addClosed={addClubClosedDays}
        removeClosed={removeClubClosedDays}
      />
    </Shell>
  )
}
