import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { changeClub, countGoals, takeOurContent } from '#server/club-actions'
import { loadClubHome } from '#server/club-views'
import { getViewer } from '#server/viewer'
import { ClubBody } from '#ui/club/club-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.club }

export default async function ClubPage() {
  const viewer = await getViewer()
  const { frame, ...club } = await orNotFound(loadClubHome(viewer))
  return (
    <Shell frame={frame} tab="club" title={club.name} lead="What every squad of the club rests on.">
      <ClubBody {...club} change={changeClub} countGoals={countGoals} takeOurs={takeOurContent} />
    </Shell>
  )
}
