import { paths } from '#ui/paths'

type PracticeLinkProps = {
  readonly practice: {
    readonly sessionId: string
    readonly kind: 'practice' | 'match'
    readonly squadName: string
    readonly title: string
    readonly startsAt: string | null
  }
  readonly when: string
  /** What else is to be known of it; empty: nothing. */
  readonly more: string
}

/** One practice or match to be opened at the pitch. */
export function PracticeLink({ practice, when, more }: PracticeLinkProps) {
  const { sessionId, kind, squadName, title, startsAt } = practice
  return (
    <li>
      <a
        href={paths.pitch(sessionId)}
        className="tap flex w-full flex-col !items-start justify-center border-2 border-ink px-3 py-2 font-bold text-ink no-underline"
      >
        <span>
          {squadName}, {when}
          {startsAt ? `, ${startsAt}` : ''}
        </span>
        <span className="text-base font-medium">
          {[kind === 'match' && 'Match', title, more].filter(Boolean).join(' · ')}
        </span>
      </a>
    </li>
  )
}
