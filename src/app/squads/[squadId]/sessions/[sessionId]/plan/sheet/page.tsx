import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { orNotFound } from '#app/or-not-found'
import { loadPlanSheet } from '#server/plan-views'
import { getViewer } from '#server/viewer'
import { LinkButton } from '#ui/page/button'
import { paths } from '#ui/paths'
import { PlanSheet } from '#ui/planning/plan-sheet'
import { PrintPage } from '#ui/planning/print-page'

export const metadata: Metadata = { title: 'Sheet for the pitch' }

type SheetPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function SheetPage({ params }: SheetPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const sheet = await orNotFound(loadPlanSheet(viewer, { squadId, sessionId }))
  if (!sheet) notFound()
  return (
    <PrintPage links={<LinkButton href={paths.plan(squadId, { sessionId })}>Back to the plan</LinkButton>}>
      <PlanSheet {...sheet} />
    </PrintPage>
  )
}
