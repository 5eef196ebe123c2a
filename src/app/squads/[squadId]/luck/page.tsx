import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadLuck } from '#server/luck-views'
import { getViewer } from '#server/viewer'
import { LuckBody } from '#ui/luck/luck-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.luck }

type LuckPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly term?: string | string[] }>
}

export default async function LuckPage({ params, searchParams }: LuckPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadLuck(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={book.frame}
      tab="flags"
      title={`${words.luck}: ${book.squad.name}`}
      lead="Would a fair draw have given gaps like these? For coaches only; families never read this, and no file holds it."
    >
      <LuckBody {...book} />
    </Shell>
  )
}
