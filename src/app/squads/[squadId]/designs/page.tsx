import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadDesigns } from '#server/design-views'
import { getViewer } from '#server/viewer'
import { DesignList } from '#ui/designs/design-list'

export const metadata: Metadata = { title: 'Designs' }

type DesignsPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function DesignsPage({ params, searchParams }: DesignsPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const list = await orNotFound(loadDesigns(viewer, { squadId, query: await searchParams }))
  return (
    <Shell
      frame={list.frame}
      tab="sessions"
      title="Designs of practices"
      lead={`The club’s own: every coach copies and edits them. ${list.squad.name} has ${list.cast.children} children today.`}
    >
      <DesignList {...list} />
    </Shell>
  )
}
