import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadSeasonBook } from '#server/book-views'
import { getViewer } from '#server/viewer'
import { SeasonBookBody } from '#ui/book/season-book-body'
import { SeasonBookLead } from '#ui/book/season-book-lead'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.book }

type BookPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function BookPage({ params, searchParams }: BookPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadSeasonBook(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={book.frame}
      tab="book"
      title={`Season book: ${book.squad.name}`}
      lead={<SeasonBookLead {...book} />}
    >
      <SeasonBookBody {...book} />
    </Shell>
  )
}
