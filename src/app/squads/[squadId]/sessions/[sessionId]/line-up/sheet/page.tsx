import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { orNotFound } from '#app/or-not-found'
import { loadLineUpPrint } from '#server/line-up-views'
import { getViewer } from '#server/viewer'
import { LineUpSheet } from '#ui/line-up/line-up-sheet'
import { LinkButton } from '#ui/page/button'
import { paths } from '#ui/paths'
import { PrintPage } from '#ui/planning/print-page'

export const metadata: Metadata = { title: 'Line-up on one sheet' }

type SheetPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function LineUpSheetPage({ params }: SheetPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const print = await orNotFound(loadLineUpPrint(viewer, { squadId, sessionId }))
  if (!print) notFound()
  return (
    <PrintPage
      links={
        <>
          <LinkButton href={paths.lineUpCard(squadId, { sessionId })}>As a card</LinkButton>
          {print.mayPlan ? (
            <LinkButton href={paths.lineUp(squadId, { sessionId })}>Back to the line-up</LinkButton>
          ) : null}
        </>
      }
    >
      <LineUpSheet {...print} />
    </PrintPage>
  )
}
