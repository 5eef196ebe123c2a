import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadFamilies } from '#server/families-views'
import { confirmPages, switchComing } from '#server/family-actions'
import { getViewer } from '#server/viewer'
import { FamiliesBody } from '#ui/family/families-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.families }

type FamiliesPageProps = { readonly params: Promise<{ readonly squadId: string }> }

export default async function FamiliesPage({ params }: FamiliesPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const book = await orNotFound(loadFamilies(viewer, { squadId }))
  return (
    <Shell
      frame={book.frame}
      tab="families"
      title={`Families: ${book.squad.name}`}
      lead="A family reads one page about its own child. It changes only when you confirm it."
    >
      <FamiliesBody {...book} confirm={confirmPages} switchComing={switchComing} />
    </Shell>
  )
}
