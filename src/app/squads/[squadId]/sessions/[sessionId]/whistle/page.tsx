import type { Metadata } from 'next'
import type { ReactNode } from 'react'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { kindToWrite } from '#server/kind-to-write'
import { loadMatchWhistle } from '#server/match-whistle-views'
import { getViewer } from '#server/viewer'
import { joinGuestToPlayer, writeAsPlanned, writeFromPitch } from '#server/whistle-actions'
import { loadWhistle } from '#server/whistle-views'
import { formatDay } from '#ui/format-day'
import { MatchWhistleBody } from '#ui/whistle/match-whistle-body'
import { WhistleBody } from '#ui/whistle/whistle-body'

export const metadata: Metadata = { title: 'After the whistle' }

type WhistlePageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function WhistlePage({ params }: WhistlePageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const at = { squadId, sessionId }
  const forms = { confirm: writeFromPitch, asPlanned: writeAsPlanned, joinGuest: joinGuestToPlayer }
  const kind = await orNotFound(kindToWrite(viewer, at))
  if (kind === 'match') {
    const { frame, ...page } = await orNotFound(loadMatchWhistle(viewer, at))
    return (
      <WhistleShell frame={frame} {...page}>
        <MatchWhistleBody {...page} {...at} {...forms} />
      </WhistleShell>
    )
  }
  const { frame, ...page } = await orNotFound(loadWhistle(viewer, at))
  return (
    <WhistleShell frame={frame} {...page}>
      <WhistleBody {...page} {...at} {...forms} />
    </WhistleShell>
  )
}

type WhistleShellProps = Pick<Awaited<ReturnType<typeof loadMatchWhistle>>, 'frame' | 'squad' | 'session'> & {
  readonly children: ReactNode
}

function WhistleShell({ frame, squad, session, children }: WhistleShellProps) {
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title={`After the whistle, ${formatDay(session.day)}`}
      lead={[squad.name, session.title, session.startsAt].filter(Boolean).join(' · ')}
    >
      {children}
    </Shell>
  )
}
