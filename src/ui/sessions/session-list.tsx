import type { Day } from '#common/time'
import { type Goals, sayGoals } from '#match/goals'
import type { Written } from '#squad/written'
import { formatDay } from '#ui/format-day'
import { LinkButton } from '#ui/page/button'
import { Empty } from '#ui/page/empty'
import { PageLink } from '#ui/page/page-link'
import { SectionTitle } from '#ui/page/section-title'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

/** A line of the list. */
export type ListedSession = {
  readonly id: string
  readonly kind: 'practice' | 'match'
  readonly day: Day
  readonly title: string
  readonly startsAt: string | null
  readonly written: Written
  readonly isCancelled: boolean
  /** How a match ended, in a club that counts goals. */
  readonly goals: Goals | null
  /** Of the design it was planned by. */
  readonly designName: string | null
  /** Who led it in the coach's place. */
  readonly coveredByName: string | null
}

type SessionListProps = {
  readonly squadId: string
  readonly today: Day
  readonly toCome: readonly ListedSession[]
  /** The latest first. */
  readonly held: readonly ListedSession[]
}

/** The practices and matches of a squad; what is not written yet stands out. */
export function SessionList({ squadId, today, toCome, held }: SessionListProps) {
  return (
    <>
      <p className="flex flex-wrap gap-2">
        <LinkButton href={paths.newSession(squadId)} weight="main">
          New practice or match
        </LinkButton>
        <LinkButton href={paths.weekly(squadId)}>Weekly practices, days without</LinkButton>
        <LinkButton href={paths.designs(squadId)}>Designs</LinkButton>
      </p>
      {toCome.length > 0 ? (
        <section>
          <SectionTitle>To come</SectionTitle>
          <Lines squadId={squadId} today={today} sessions={toCome} isToCome />
        </section>
      ) : null}
      <section>
        <SectionTitle note="The latest first.">Held</SectionTitle>
        {held.length > 0 ? (
          <Lines squadId={squadId} today={today} sessions={held} isToCome={false} />
        ) : (
          <Empty>Nothing has been held in this season yet.</Empty>
        )}
      </section>
    </>
  )
}

type LinesProps = {
  readonly squadId: string
  readonly today: Day
  readonly sessions: readonly ListedSession[]
  readonly isToCome: boolean
}

function Lines({ squadId, today, sessions, isToCome }: LinesProps) {
  return (
    <ul className="border-t border-rule">
      {sessions.map((session) => (
        <li key={session.id} className="flex flex-wrap items-center gap-x-4 border-b border-rule py-1">
          <PageLink
            href={paths.session(squadId, { sessionId: session.id })}
            className="tap flex min-w-0 flex-1 basis-64 flex-wrap items-center gap-x-3 no-underline"
          >
            <span className="w-36 shrink-0 font-medium text-ink">{formatDay(session.day)}</span>
            <span className={`underline underline-offset-4 ${session.isCancelled ? 'line-through' : ''}`}>
              {words.kind[session.kind]}
              {session.title || session.designName ? `: ${session.title || session.designName}` : ''}
            </span>
            {session.goals ? <span>{sayGoals(session.goals)}</span> : null}
            {session.startsAt ? <span className="text-soft">{session.startsAt}</span> : null}
          </PageLink>
          {session.coveredByName ? (
            <span className="text-sm text-soft">covered by {session.coveredByName}</span>
          ) : null}
          <Standing squadId={squadId} today={today} session={session} isToCome={isToCome} />
        </li>
      ))}
    </ul>
  )
}

/** How it was written; what nobody has written yet is a button. */
function Standing({
  squadId,
  today,
  session,
  isToCome,
}: Omit<LinesProps, 'sessions'> & { readonly session: ListedSession }) {
  if (session.isCancelled) return <span className="text-soft">cancelled</span>
  if (session.written !== 'notWritten') {
    return (
      <span className={session.written === 'asPlanned' ? 'border border-dashed border-rule-strong px-2' : ''}>
        {words.written[session.written]}
      </span>
    )
  }
  if (isToCome) return <span className="text-soft">{session.day === today ? 'today' : 'not held yet'}</span>
  return (
    <PageLink
      href={paths.writeSession(squadId, { sessionId: session.id })}
      className="tap flex items-center border-2 border-warn bg-warn-pale px-3 font-semibold text-warn"
    >
      not written yet: write it down
    </PageLink>
  )
}
