import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { answerFlag } from '#server/flag-actions'
import { loadFlags } from '#server/flag-views'
import { getViewer } from '#server/viewer'
import { FlagsBody } from '#ui/flags/flags-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.flags }

type FlagsPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function FlagsPage({ params, searchParams }: FlagsPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadFlags(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={book.frame}
      tab="flags"
      title={`Flags: ${book.squad.name}`}
      lead="A flag asks for something to be done. It never says how good anyone is, and there is no order by size."
    >
      <FlagsBody {...book} answer={answerFlag} />
    </Shell>
  )
}
