import type { Day } from '#common/time'

type Planned = {
  readonly kind: 'practice' | 'match'
  readonly day: Day
  readonly startsAt: string | null
  readonly place: string
  readonly isCancelled: boolean
  readonly written: string
}

/** When and where a coming practice is; only for families that may know. */
export type ComingWhen = { readonly day: Day; readonly startsAt: string | null; readonly place: string }

/** The practice that comes next. `sessions` in order of time. */
export function nextPractice<Session extends Planned>(
  sessions: readonly Session[],
  today: Day,
): Session | null {
  return (
    sessions.find(
      ({ kind, day, isCancelled, written }) =>
        kind === 'practice' && day >= today && !isCancelled && written === 'notWritten',
    ) ?? null
  )
}

/** Time and place are told only where the squad's coach switched it on, and to nobody it is withheld from. */
export function comingWhen(
  practice: Planned,
  { showsComing, isWithheld }: { readonly showsComing: boolean; readonly isWithheld: boolean },
): ComingWhen | null {
  if (!showsComing || isWithheld) return null
  const { day, startsAt, place } = practice
  return { day, startsAt, place }
}
