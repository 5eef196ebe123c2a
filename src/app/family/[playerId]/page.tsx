import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { loadFamilyPage } from '#server/family-views'
import { leave } from '#server/sign-in-actions'
import { getViewer } from '#server/viewer'
import { FamilyBody } from '#ui/family/family-body'
import { FamilyFrame } from '#ui/family/family-frame'
import { Notice } from '#ui/page/notice'
import { paths } from '#ui/paths'

export const metadata: Metadata = { title: 'Your child' }

type FamilyPageProps = { readonly params: Promise<{ readonly playerId: string }> }

export default async function FamilyPage({ params }: FamilyPageProps) {
  const viewer = await getViewer()
  const { playerId } = await params
  const book = await orNotFound(loadFamilyPage(viewer, { playerId }))
  return (
    <FamilyFrame
      clubName={book.clubName}
      viewerName={book.viewerName}
      title={book.childName}
      lead={`Season ${book.seasonName} so far`}
      others={book.others}
      wayOut={
        <form action={leave}>
          <button type="submit" className="tap cursor-pointer text-accent underline underline-offset-4">
            Sign out
          </button>
        </form>
      }
    >
      {book.isFamily ? null : <Notice>From here on, the page is as the family sees it.</Notice>}
      <FamilyBody
        squads={book.squads}
        askWhom={book.askWhom}
        ask={book.isFamily ? <a href={paths.familyAsk(playerId)}>Ask, or say no, here</a> : null}
      />
    </FamilyFrame>
  )
}
