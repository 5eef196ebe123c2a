import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { answerTermReview, handOver, openReview } from '#server/review-actions'
import { loadReview } from '#server/review-views'
import { getViewer } from '#server/viewer'
import { formatDays } from '#ui/format-day'
import { ReviewBody } from '#ui/review/review-body'
import { words } from '#ui/words'

export const metadata: Metadata = { title: words.tab.review }

type ReviewPageProps = { readonly searchParams: Promise<{ readonly term?: string | string[] }> }

export default async function ReviewPage({ searchParams }: ReviewPageProps) {
  const viewer = await getViewer()
  const { frame, ...book } = await orNotFound(loadReview(viewer, { query: await searchParams }))
  return (
    <Shell
      frame={frame}
      tab="review"
      title={book.term ? `Review of ${book.term.name}` : 'Review'}
      lead={book.term ? `${frame.clubName}, ${formatDays(book.term)}` : frame.clubName}
    >
      <ReviewBody {...book} open={openReview} answer={answerTermReview} handOver={handOver} />
    </Shell>
  )
}
