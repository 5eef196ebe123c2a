import { type Goals, sayGoals } from '#match/goals'
import type { Written } from '#squad/written'
import { words } from '#ui/words'

type SessionLeadProps = {
  readonly squad: { readonly name: string }
  readonly session: {
    readonly title: string
    readonly startsAt: string | null
    readonly place: string
    readonly written: Written
    readonly isCancelled: boolean
    readonly goals: Goals | null
  }
  readonly countsGoals: boolean
  readonly coveredByName: string | null
  readonly writtenByName: string | null
}

/** Whose session, how it was written and by whom; one line under the title. */
export function SessionLead({ squad, session, countsGoals, coveredByName, writtenByName }: SessionLeadProps) {
  const parts = [
    squad.name,
    session.title,
    session.startsAt,
    session.place,
    countsGoals && session.goals ? `${sayGoals(session.goals)}, ours first` : null,
    coveredByName ? `covered by ${coveredByName}` : null,
    session.isCancelled ? 'cancelled' : words.written[session.written],
    writtenByName && !session.isCancelled ? `by ${writtenByName}` : null,
  ]
  return <>{parts.filter(Boolean).join(' · ')}</>
}
