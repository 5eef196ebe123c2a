import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { makeHelperPass, takeBackHelperPass } from '#server/helper-actions'
import { loadHelpers } from '#server/helper-views'
import { addressOfRequest } from '#server/request-address'
import { getViewer } from '#server/viewer'
import { formatDay } from '#ui/format-day'
import { HelpersBody } from '#ui/join/helpers-body'

export const metadata: Metadata = { title: 'Let a helper join', referrer: 'same-origin' }

type HelpersPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function HelpersPage({ params }: HelpersPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const address = await addressOfRequest()
  const { frame, squad, session, ...page } = await orNotFound(
    loadHelpers(viewer, { squadId, sessionId, address }),
  )
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title="Let a helper join"
      lead={[squad.name, formatDay(session.day), session.title].filter(Boolean).join(' · ')}
    >
      <HelpersBody
        {...page}
        kind={session.kind}
        squadId={squadId}
        sessionId={sessionId}
        make={makeHelperPass}
        takeBack={takeBackHelperPass}
      />
    </Shell>
  )
}
