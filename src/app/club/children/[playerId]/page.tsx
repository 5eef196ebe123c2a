import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { eraseChild, recordConsent, withdrawConsent } from '#server/child-actions'
import { loadChildPage } from '#server/child-views'
import { getViewer } from '#server/viewer'
import { PageLink } from '#ui/page/page-link'
import { paths } from '#ui/paths'
import { ChildBody } from '#ui/rights/child-body'

export const metadata: Metadata = { title: 'All that is kept' }

type ChildPageProps = { readonly params: Promise<{ readonly playerId: string }> }

const sends = { erase: eraseChild, consent: recordConsent, withdraw: withdrawConsent }

export default async function ChildPage({ params }: ChildPageProps) {
  const viewer = await getViewer()
  const { playerId } = await params
  const { frame, ...page } = await orNotFound(loadChildPage(viewer, { playerId }))
  return (
    <Shell
      frame={frame}
      tab="club"
      title={page.copy.child.name}
      lead={
        <>
          All that is kept about this child.{' '}
          <PageLink href={paths.clubRequests()}>What families ask</PageLink>
        </>
      }
    >
      <ChildBody {...page} sends={sends} />
    </Shell>
  )
}
