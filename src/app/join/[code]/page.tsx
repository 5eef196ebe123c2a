import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { loadJoin } from '#server/helper-views'
import { joinPractice } from '#server/join-actions'
import { JoinBody } from '#ui/join/join-body'
import { WholePage } from '#ui/page/whole-page'

/** The address is the key: it is told to no other site, and to no search engine. */
export const metadata: Metadata = {
  title: 'Help at the pitch',
  referrer: 'same-origin',
  robots: { index: false, follow: false },
}

type JoinPageProps = { readonly params: Promise<{ readonly code: string }> }

export default async function JoinPage({ params }: JoinPageProps) {
  const { code } = await params
  const page = await loadJoin(code)
  if (page === null) notFound()
  return (
    <WholePage title="Help at the pitch">
      {page.isOpen ? (
        <JoinBody {...page} code={code} join={joinPractice} />
      ) : (
        <p>
          This code opens nothing any more: it was good until midnight of its day, or the coach took it back.
          Ask the coach for a new one.
        </p>
      )}
    </WholePage>
  )
}
