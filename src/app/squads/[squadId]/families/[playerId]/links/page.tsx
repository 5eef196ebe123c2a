import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadFamilyLinks } from '#server/family-links-views'
import { makeFamilyLink, revokeFamilyLink } from '#server/link-actions'
import { addressOfRequest } from '#server/request-address'
import { getViewer } from '#server/viewer'
import { FamilyLinksBody } from '#ui/people/family-links-body'

export const metadata: Metadata = { title: 'Links for guardians' }

type LinksPageProps = { readonly params: Promise<{ readonly squadId: string; readonly playerId: string }> }

export default async function FamilyLinksPage({ params }: LinksPageProps) {
  const viewer = await getViewer()
  const { squadId, playerId } = await params
  const address = await addressOfRequest()
  const { frame, ...page } = await orNotFound(loadFamilyLinks(viewer, { squadId, playerId, address }))
  return (
    <Shell
      frame={frame}
      tab="families"
      title={`${page.childName}: links for guardians`}
      lead={page.squad.name}
    >
      <FamilyLinksBody {...page} make={makeFamilyLink} revoke={revokeFamilyLink} />
    </Shell>
  )
}
