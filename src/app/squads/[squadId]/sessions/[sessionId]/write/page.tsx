import type { Metadata } from 'next'
import { orNotFound } from '#app/or-not-found'
import { Shell } from '#app/shell'
import { writeMatch, writePractice } from '#server/session-actions'
import { getViewer } from '#server/viewer'
import { loadWritingPage } from '#server/writing-views'
import { MatchForm } from '#ui/entry/match-form'
import { PracticeForm } from '#ui/entry/practice-form'
import { formatDay } from '#ui/format-day'
import { Notice } from '#ui/page/notice'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

export const metadata: Metadata = { title: 'Write it down' }

type WritePageProps = {
  readonly params: Promise<{ readonly squadId: string; readonly sessionId: string }>
  readonly searchParams: Promise<Readonly<Record<string, string | string[]>>>
}

export default async function WritePage({ params, searchParams }: WritePageProps) {
  const viewer = await getViewer()
  const { squadId, sessionId } = await params
  const { turn } = await searchParams
  const { frame, session, squad, closed, ...form } = await orNotFound(
    loadWritingPage(viewer, { squadId, sessionId }),
  )
  const where = { squadId, sessionId, doneHref: paths.session(squadId, { sessionId }) }
  const onlyTurn = typeof turn === 'string' ? turn : null
  return (
    <Shell
      frame={frame}
      tab="sessions"
      title={`${words.kind[session.kind]}, ${formatDay(session.day)}`}
      lead={[squad.name, session.title].filter(Boolean).join(' · ')}
    >
      {closed ? (
        <Notice>{closed}</Notice>
      ) : session.kind === 'practice' ? (
        <PracticeForm
          {...where}
          {...form}
          lengthSeconds={session.lengthSeconds}
          designId={session.designId}
          onlyTurn={onlyTurn}
          send={writePractice}
        />
      ) : (
        <MatchForm {...where} {...form} periods={session.periods ?? []} send={writeMatch} />
      )}
    </Shell>
  )
}
