import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { putFormatAway, takeLeastTime } from '#server/format-actions'
import { loadFormat } from '#server/format-views'
import { getViewer } from '#server/viewer'
import { FormatBody } from '#ui/formats/format-body'
import { formatInShort } from '#ui/formats/format-sentences'
import { tabOfFormats } from '#ui/formats/tab-of-formats'

export const metadata: Metadata = { title: 'Match format' }

type FormatPageProps = { readonly params: Promise<{ readonly formatId: string }> }

export default async function FormatPage({ params }: FormatPageProps) {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadFormat(viewer, (await params).formatId))
  const { format } = page.format
  return (
    <Shell
      frame={frame}
      tab={tabOfFormats(frame.tabs)}
      title={format.name}
      lead={`${formatInShort(format)}.`}
    >
      <FormatBody {...page} putAway={putFormatAway} takeLeastTime={takeLeastTime} />
    </Shell>
  )
}
