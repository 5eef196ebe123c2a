import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { confirmPages, writeFamilyNote } from '#server/family-actions'
import { loadFamilyPreview } from '#server/family-preview-views'
import { answerFlag } from '#server/flag-actions'
import { getViewer } from '#server/viewer'
import { PreviewBody } from '#ui/family/preview-body'
import { formatDay } from '#ui/format-day'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.families }

type PreviewPageProps = { readonly params: Promise<{ readonly squadId: string; readonly playerId: string }> }

export default async function PreviewPage({ params }: PreviewPageProps) {
  const viewer = await getViewer()
  const { squadId, playerId } = await params
  const preview = await orNotFound(loadFamilyPreview(viewer, { squadId, playerId }))
  const left = preview.leftOn ? `, left on ${formatDay(preview.leftOn)}` : ''
  return (
    <Shell
      frame={preview.frame}
      tab="families"
      title={`${preview.name}: the family’s page`}
      lead={`${preview.squad.name}${left}`}
    >
      <PreviewBody {...preview} confirm={confirmPages} writeNote={writeFamilyNote} answer={answerFlag} />
    </Shell>
  )
}
