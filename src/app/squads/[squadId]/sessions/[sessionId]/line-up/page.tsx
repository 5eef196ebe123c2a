import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { LineUpPlanner } from '#app/squads/[squadId]/sessions/[sessionId]/line-up/line-up-planner'
import { saveLineUp } from '#server/line-up-actions'
import { loadLineUpPage } from '#server/line-up-views'
import { addPlayerPair, endPlayerPair } from '#server/plan-actions'
import { getViewer } from '#server/viewer'
import { formatDay } from '#ui/format-day'
import { Notice } from '#ui/page/notice'

export const metadata: Metadata = { title: 'Plan a line-up' }

type LineUpPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function LineUpPage({ params }: LineUpPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const { frame, squad, session, closed, ...page } = await orNotFound(
    loadLineUpPage(viewer, { squadId, sessionId }),
  )
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title={`Plan the line-up, ${formatDay(session.day)}`}
      lead={[squad.name, session.title, session.startsAt].filter(Boolean).join(' · ')}
    >
      {closed ? (
        <Notice>{closed}</Notice>
      ) : (
        <LineUpPlanner
          {...page}
          squadId={squadId}
          session={{ id: session.id, day: session.day, periods: session.periods }}
          save={saveLineUp}
          addPair={addPlayerPair}
          endPair={endPlayerPair}
        />
      )}
    </Shell>
  )
}
