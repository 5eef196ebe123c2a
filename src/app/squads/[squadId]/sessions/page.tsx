import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadSessionList } from '#server/session-list-views'
import { getViewer } from '#server/viewer'
import { SessionList } from '#ui/sessions/session-list'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.sessions }

type SessionsPageProps = { readonly params: Promise<{ readonly squadId: string }> }

export default async function SessionsPage({ params }: SessionsPageProps) {
  const viewer = await getViewer()
  const { squadId } = await params
  const list = await orNotFound(loadSessionList(viewer, { squadId }))
  return (
    <Shell
      frame={list.frame}
      tab="sessions"
      title={`${words.tab.sessions}: ${list.squad.name}`}
      lead={`${list.seasonName}: ${list.writtenCount} of ${words.sessions(list.heldCount)} held are written down.`}
    >
      <SessionList squadId={squadId} today={list.today} toCome={list.toCome} held={list.held} />
    </Shell>
  )
}
