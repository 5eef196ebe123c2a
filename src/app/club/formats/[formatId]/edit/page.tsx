import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { saveFormat } from '#server/format-actions'
import { loadFormatForm } from '#server/format-views'
import { getViewer } from '#server/viewer'
import { FormatForm } from '#ui/formats/format-form'
import { tabOfFormats } from '#ui/formats/tab-of-formats'

const title = 'Change a match format'
export const metadata: Metadata = { title }

type EditFormatPageProps = { readonly params: Promise<{ readonly formatId: string }> }

export default async function EditFormatPage({ params }: EditFormatPageProps) {
  const viewer = await getViewer()
  const { frame, ...form } = await orNotFound(loadFormatForm(viewer, (await params).formatId))
  return (
    <Shell frame={frame} tab={tabOfFormats(frame.tabs)} title={title} lead={form.format.name}>
      <FormatForm {...form} send={saveFormat} />
    </Shell>
  )
}
