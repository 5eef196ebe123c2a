import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { chooseFormat, takeFormat } from '#server/format-actions'
import { loadFormats } from '#server/format-views'
import { getViewer } from '#server/viewer'
import { FormatsBody } from '#ui/formats/formats-body'
import { tabOfFormats } from '#ui/formats/tab-of-formats'

const title = 'Match formats'
export const metadata: Metadata = { title }

export default async function FormatsPage() {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadFormats(viewer))
  return (
    <Shell
      frame={frame}
      tab={tabOfFormats(frame.tabs)}
      title={title}
      lead="How matches are played: how many a side, how long, and what everyone is promised."
    >
      <FormatsBody {...page} take={takeFormat} choose={chooseFormat} />
    </Shell>
  )
}
