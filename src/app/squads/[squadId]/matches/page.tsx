import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadMatchBook } from '#server/match-book-views'
import { getViewer } from '#server/viewer'
import { MatchBookBody } from '#ui/matches/match-book-body'
import { MatchBookLead } from '#ui/matches/match-book-lead'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.kinds.match }

type MatchesPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function MatchesPage({ params, searchParams }: MatchesPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadMatchBook(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={book.frame}
      tab="book"
      title={`Matches: ${book.squad.name}`}
      lead={<MatchBookLead {...book} />}
    >
      <MatchBookBody {...book} />
    </Shell>
  )
}
