import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { loadCommittee } from '#server/review-views'
import { getViewer } from '#server/viewer'
import { formatDays } from '#ui/format-day'
import { CommitteeBody } from '#ui/review/committee-body'

export const metadata: Metadata = { title: 'Review for the committee' }

type CommitteePageProps = { readonly searchParams: Promise<{ readonly term?: string | string[] }> }

export default async function CommitteePage({ searchParams }: CommitteePageProps) {
  const viewer = await getViewer()
  const { frame, term, squads } = await orNotFound(loadCommittee(viewer, { query: await searchParams }))
  return (
    <Shell
      frame={frame}
      tab="review"
      title={term ? `${term.name}, for the committee` : 'For the committee'}
      lead={term ? `${frame.clubName}, ${formatDays(term)}` : frame.clubName}
    >
      <CommitteeBody term={term} squads={squads} />
    </Shell>
  )
}
