import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { addDesign } from '#server/design-actions'
import { loadDesignForm } from '#server/design-views'
import { getViewer } from '#server/viewer'
import { DesignForm } from '#ui/designs/design-form'

export const metadata: Metadata = { title: 'New design' }

type NewDesignPageProps = { readonly params: Promise<{ readonly squadId: string }> }

export default async function NewDesignPage({ params }: NewDesignPageProps) {
  const viewer = await getViewer()
  const { frame, ...form } = await orNotFound(
    loadDesignForm(viewer, { squadId: (await params).squadId, designId: null }),
  )
  return (
    <Shell frame={frame} tab="sessions" title="New design">
      <DesignForm {...form} send={addDesign} />
    </Shell>
  )
}
