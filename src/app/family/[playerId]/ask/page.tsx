import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { loadAskPage } from '#server/ask-about-child'
import { askAboutChild } from '#server/ask-actions'
import { leave } from '#server/sign-in-actions'
import { getViewer } from '#server/viewer'
import { FamilyFrame } from '#ui/family/family-frame'
import { AskBody } from '#ui/rights/ask-body'

export const metadata: Metadata = { title: 'Ask about your child' }

type AskPageProps = { readonly params: Promise<{ readonly playerId: string }> }

export default async function AskPage({ params }: AskPageProps) {
  const viewer = await getViewer()
  const { playerId } = await params
  const { clubName, viewerName, ...page } = await orNotFound(loadAskPage(viewer, { playerId }))
  return (
    <FamilyFrame
      clubName={clubName}
      viewerName={viewerName}
      title={`Ask about ${page.child.name}`}
      lead="See it, have it put right, or say no."
      others={[]}
      wayOut={
        <form action={leave}>
          <button type="submit" className="tap cursor-pointer text-accent underline underline-offset-4">
            Sign out
          </button>
        </form>
      }
    >
      <AskBody {...page} ask={askAboutChild} />
    </FamilyFrame>
  )
}
