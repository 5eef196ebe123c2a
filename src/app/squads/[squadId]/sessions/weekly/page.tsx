import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { getViewer } from '#server/viewer'
import { loadWeekly } from '#server/weekly-views'
import { addClosedDays, enterWeekly, removeClosedDays, removeGround, setGround } from '#server/weeks-actions'
import { WeeklyBody } from '#ui/weeks/weekly-body'

const title = 'Weekly practices'
export const metadata: Metadata = { title }

type WeeklyPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

const sends = {
  enter: enterWeekly,
  addClosed: addClosedDays,
  removeClosed: removeClosedDays,
  setGround,
  removeGround,
}

export default async function WeeklyPage({ params, searchParams }: WeeklyPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const { frame, ...page } = await orNotFound(loadWeekly(viewer, { squadId, query: await searchParams }))
  return (
    <Shell frame={frame} tab="sessions" title={`${title}: ${page.squad.name}`}>
      <WeeklyBody {...page} sends={sends} />
    </Shell>
  )
}
