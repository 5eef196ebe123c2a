import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { PlanPlanner } from '#app/squads/[squadId]/sessions/[sessionId]/plan/plan-planner'
import { addPlayerPair, endPlayerPair, savePracticePlan } from '#server/plan-actions'
import { loadPlanPage } from '#server/plan-views'
import { getViewer } from '#server/viewer'
import { formatDay } from '#ui/format-day'
import { Notice } from '#ui/page/notice'

export const metadata: Metadata = { title: 'Plan a practice' }

type PlanPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function PlanPage({ params }: PlanPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const { frame, squad, session, closed, ...page } = await orNotFound(
    loadPlanPage(viewer, { squadId, sessionId }),
  )
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title={`Plan the practice, ${formatDay(session.day)}`}
      lead={[squad.name, session.title, session.startsAt].filter(Boolean).join(' · ')}
    >
      {closed ? (
        <Notice>{closed}</Notice>
      ) : (
        <PlanPlanner
          {...page}
          squadId={squadId}
          session={{ id: session.id, day: session.day, designId: session.designId }}
          save={savePracticePlan}
          addPair={addPlayerPair}
          endPair={endPlayerPair}
        />
      )}
    </Shell>
  )
}
