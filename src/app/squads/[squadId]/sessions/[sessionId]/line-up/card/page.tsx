import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { orNotFound } from '#app/or-not-found'
import { loadLineUpPrint } from '#server/line-up-views'
import { getViewer } from '#server/viewer'
import { LineUpCard } from '#ui/line-up/line-up-card'
import { LinkButton } from '#ui/page/button'
import { paths } from '#ui/paths'
import { PrintPage } from '#ui/planning/print-page'

export const metadata: Metadata = { title: 'Line-up on a card' }

type CardPageProps = { readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }> }

export default async function LineUpCardPage({ params }: CardPageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const print = await orNotFound(loadLineUpPrint(viewer, { squadId, sessionId }))
  if (!print) notFound()
  return (
    <PrintPage
      links={
        <>
          <LinkButton href={paths.lineUpSheet(squadId, { sessionId })}>On A4</LinkButton>
          {print.mayPlan ? (
            <LinkButton href={paths.lineUp(squadId, { sessionId })}>Back to the line-up</LinkButton>
          ) : null}
          <span className="text-sm text-soft">
            Print at full size and cut along the marks: each card is 74 × 105 mm.
          </span>
        </>
      }
    >
      <LineUpCard {...print} />
    </PrintPage>
  )
}
