import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { enterSession } from '#server/session-actions'
import { loadNewSession } from '#server/session-list-views'
import { getViewer } from '#server/viewer'
import { NewSessionForm } from '#ui/sessions/new-session-form'

export const metadata: Metadata = { title: 'New practice or match' }

type NewSessionPageProps = {
  readonly params: Promise<{ readonly squadId: string }>
  readonly searchParams: Promise<{ readonly design?: string | string[] }>
}

export default async function NewSessionPage({ params, searchParams }: NewSessionPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const { frame, squad, ...form } = await orNotFound(loadNewSession(viewer, { squadId }))
  return (
    <Shell frame={frame} tab="sessions" title={`New practice or match: ${squad.name}`}>
      <NewSessionForm
        squadId={squadId}
        {...form}
        designId={(await searchParams).design?.toString()}
        send={enterSession}
      />
    </Shell>
  )
}
