import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { cancelWritten, changeWhenAndWhere, writeGoals } from '#server/session-actions'
import { loadSessionPage } from '#server/session-views'
import { getViewer } from '#server/viewer'
import { formatDay } from '#ui/format-day'
import { MatchGoalsForm } from '#ui/sessions/match-goals-form'
import { SessionBody } from '#ui/sessions/session-body'
import { SessionLead } from '#ui/sessions/session-lead'
import { WhenAndWhereForm } from '#ui/sessions/when-and-where-form'
import { words } from '#ui/words'

export const metadata: Metadata = { title: 'Practice or match' }

type SessionPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function SessionPage({ params }: SessionPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const page = await orNotFound(loadSessionPage(viewer, { squadId, sessionId }))
  const { session, written } = page
  return (
    <Shell
      frame={page.frame}
      tab="sessions"
      title={`${words.kind[session.kind]}, ${formatDay(session.day)}`}
      lead={<SessionLead {...page} />}
    >
      <SessionBody
        {...page}
        squadId={squadId}
        register={written.register}
        spells={written.kind === 'match' ? written.match.spells : []}
        cancel={cancelWritten}
      />
      {page.mayWrite && !session.isCancelled ? (
        <WhenAndWhereForm
          squadId={squadId}
          session={{ ...session, isWritten: session.written !== 'notWritten' }}
          send={changeWhenAndWhere}
        />
      ) : null}
      {page.mayWriteGoals ? (
        <MatchGoalsForm squadId={squadId} sessionId={session.id} goals={session.goals} send={writeGoals} />
      ) : null}
    </Shell>
  )
}
