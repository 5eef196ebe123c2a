import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { plainFormat } from '#lineup/draft/plain-format'
import { saveFormat } from '#server/format-actions'
import { loadNewFormat } from '#server/format-views'
import { getViewer } from '#server/viewer'
import { FormatForm } from '#ui/formats/format-form'
import { tabOfFormats } from '#ui/formats/tab-of-formats'

const title = 'New match format'
export const metadata: Metadata = { title }

export default async function NewFormatPage() {
  const viewer = await getViewer()
  const { frame } = await orNotFound(loadNewFormat(viewer))
  return (
    <Shell frame={frame} tab={tabOfFormats(frame.tabs)} title={title}>
      <FormatForm
        formatId=""
        version=""
        format={{ ...plainFormat, name: '' }}
        keepsSource={false}
        send={saveFormat}
      />
    </Shell>
  )
}
