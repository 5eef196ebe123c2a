import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { answerRequest, extendRequest } from '#server/request-actions'
import { loadRequest } from '#server/request-views'
import { getViewer } from '#server/viewer'
import { PageLink } from '#ui/page/page-link'
import { paths } from '#ui/paths'
import { RequestBody } from '#ui/rights/request-body'

export const metadata: Metadata = { title: 'What a family asks' }

type RequestPageProps = { readonly params: Promise<{ readonly requestId: string }> }

const sends = { extend: extendRequest, answer: answerRequest }

export default async function RequestPage({ params }: RequestPageProps) {
  const viewer = await getViewer()
  const { requestId } = await params
  const { frame, ...page } = await orNotFound(loadRequest(viewer, { requestId }))
  return (
    <Shell
      frame={frame}
      tab="club"
      title="What a family asks"
      lead={<PageLink href={paths.clubRequests()}>All requests</PageLink>}
    >
      <RequestBody {...page} sends={sends} />
    </Shell>
  )
}
