import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { changeDesign } from '#server/design-actions'
import { loadDesignForm } from '#server/design-views'
import { getViewer } from '#server/viewer'
import { DesignForm } from '#ui/designs/design-form'

export const metadata: Metadata = { title: 'Edit a design' }

type EditDesignPageProps = {
  readonly params: Promise<{ readonly squadId: string; readonly designId: string }>
}

export default async function EditDesignPage({ params }: EditDesignPageProps) {
  const viewer = await getViewer()
  const { frame, ...form } = await orNotFound(loadDesignForm(viewer, await params))
  return (
    <Shell frame={frame} tab="sessions" title={`Edit: ${form.edited?.sheet.name ?? ''}`}>
      <DesignForm key={form.edited?.version} {...form} send={changeDesign} />
    </Shell>
  )
}
