import type { Metadata } from 'next'
import { Shell } from '#app/shell'
import { loadNoSeason } from '#server/club-views'
import { getViewer } from '#server/viewer'
import { NoSeasonBody } from '#ui/club/no-season-body'

const title = 'No season yet'
export const metadata: Metadata = { title }

/** Where pages of squads lead while the club has no season. */
export default async function NoSeasonPage() {
  const { frame, ...page } = await loadNoSeason(await getViewer())
  return (
    <Shell frame={frame} tab={null} title={title}>
      <NoSeasonBody {...page} />
    </Shell>
  )
}
