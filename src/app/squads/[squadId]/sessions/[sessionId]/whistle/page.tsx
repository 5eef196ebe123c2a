import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { getViewer } from '#server/viewer'
import { joinGuestToPlayer, writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import { loadWhistle } from '#server/whistle-views'
import { formatDay } from '#ui/format-day'
import { WhistleBody } from '#ui/whistle/whistle-body'

export const metadata: Metadata = { title: 'After the whistle' }

type WhistlePageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function WhistlePage({ params }: WhistlePageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const { frame, squad, session, ...page } = await orNotFound(loadWhistle(viewer, { squadId, sessionId }))
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title={`After the whistle, ${formatDay(session.day)}`}
      lead={[squad.name, session.title, session.startsAt].filter(Boolean).join(' · ')}
    >
      <WhistleBody
        {...page}
        squadId={squadId}
        sessionId={sessionId}
        confirm={writeFromPitch}
        asPlanned={writeAsPlanned}
        joinGuest={joinGuestToPlayer}
      />
    </Shell>
  )
}
