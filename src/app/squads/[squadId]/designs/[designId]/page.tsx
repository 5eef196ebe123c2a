import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { copyDesign, putDesignAway } from '#server/design-actions'
import { loadDesign } from '#server/design-views'
import { getViewer } from '#server/viewer'
import { DesignBody } from '#ui/designs/design-body'
import { DesignLead } from '#ui/designs/design-lead'

export const metadata: Metadata = { title: 'Design of a practice' }

type DesignPageProps = {
  readonly params: Promise<{ readonly squadId: string; readonly designId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

const sends = { copy: copyDesign, putAway: putDesignAway }

export default async function DesignPage({ params, searchParams }: DesignPageProps) {
  const viewer = await getViewer()
  const page = await orNotFound(loadDesign(viewer, { ...(await params), query: await searchParams }))
  return (
    <Shell frame={page.frame} tab="sessions" title={page.sheet.name} lead={<DesignLead {...page} />}>
      <DesignBody {...page} sends={sends} />
    </Shell>
  )
}
