import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import type { RecordQuery } from '#server/record-filter'
import { loadRecord } from '#server/record-views'
import { getViewer } from '#server/viewer'
import { RecordBody } from '#ui/record/record-body'

export const metadata: Metadata = { title: 'Changes and looks' }

type RecordPageProps = { readonly searchParams: Promise<RecordQuery> }

export default async function RecordPage({ searchParams }: RecordPageProps) {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadRecord(viewer, { query: await searchParams }))
  return (
    <Shell
      frame={frame}
      tab="club"
      title="Changes and looks"
      lead="Who changed what, and which adult looked at a child’s page."
    >
      <RecordBody {...page} />
    </Shell>
  )
}
