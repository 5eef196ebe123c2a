import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadToday } from '#server/today-views'
import { getViewer } from '#server/viewer'
import { formatDay } from '#ui/format-day'
import { TodayBody } from '#ui/today/today-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.today }

type TodayPageProps = { readonly params: Promise<{ readonly squadId: string }> }

export default async function TodayPage({ params }: TodayPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadToday(viewer, { squadId }))
  return (
    <Shell frame={book.frame} tab="today" title={`Today: ${book.squad.name}`} lead={formatDay(book.today)}>
      <TodayBody {...book} />
    </Shell>
  )
}
