import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadFamilyPage } from '#server/family-views'
import { getViewer } from '#server/viewer'
import { FamilyBody } from '#ui/family/family-body'
import { Notice } from '#ui/page/notice'

export const metadata: Metadata = { title: 'Your child' }

type FamilyPageProps = { readonly params: Promise<{ readonly playerId: string }> }

export default async function FamilyPage({ params }: FamilyPageProps) {
  const viewer = await getViewer()
  const { playerId } = await params
  const book = await orNotFound(loadFamilyPage(viewer, { playerId }))
  return (
    <Shell frame={book.frame} tab={null} title={book.childName} lead={`Season ${book.seasonName} so far`}>
      {book.isFamily ? null : <Notice>From here on, the page is as the family sees it.</Notice>}
      <FamilyBody squads={book.squads} />
    </Shell>
  )
}
