import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { changeClubRights, writeDownRequest } from '#server/request-actions'
import { loadRequests } from '#server/request-views'
import { getViewer } from '#server/viewer'
import { RequestsBody } from '#ui/rights/requests-body'

export const metadata: Metadata = { title: 'What families ask' }

const sends = { writeDown: writeDownRequest, rights: changeClubRights }

export default async function RequestsPage() {
  const viewer = await getViewer()
  const { frame, ...page } = await orNotFound(loadRequests(viewer))
  return (
    <Shell
      frame={frame}
      tab="club"
      title="What families ask"
      lead="A family may see what is kept of its child, have it put right, say no, and have its name taken out."
    >
      <RequestsBody {...page} sends={sends} />
    </Shell>
  )
}
