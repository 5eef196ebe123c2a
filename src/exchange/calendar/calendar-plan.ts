import type { Day, Seconds } from '#common/time'
import type { CalendarEntry } from '#exchange/calendar/calendar-entry'
import type { DaySpan } from '#exchange/table/date-form'
import type { Goals } from '#match/goals'

/** A session of the squad's book, as far as a calendar is compared with it. */
export type KnownCalendarSession = {
  readonly id: string
  readonly code: string | null
  readonly day: Day
  readonly kind: 'practice' | 'match'
  readonly title: string
  readonly startsAt: string | null
  readonly place: string
  readonly lengthSeconds: Seconds | null
  readonly goals: Goals | null
  readonly isCancelled: boolean
  /** Something is written or tapped of it, so its day and length stay. */
  readonly isWritten: boolean
}

/** What an import changes on a session that the book has; what the file does not say stays. */
export type CalendarChange = Partial<
  Pick<KnownCalendarSession, 'day' | 'title' | 'startsAt' | 'place' | 'lengthSeconds' | 'goals'>
>

/** Told, not written. */
export type CalendarNote = 'goalsNotCounted' | 'otherTitle'

export type CalendarQuestion =
  /** Another one of the kind on that day: perhaps the same, under another name. */
  'perhapsSame' | 'oneForTwoRows' | 'cancelled'

export type CalendarOutcome =
  | { readonly kind: 'new'; readonly entry: CalendarEntry; readonly notes: readonly CalendarNote[] }
  | {
      readonly kind: 'known'
      readonly session: KnownCalendarSession
      readonly change: CalendarChange
      readonly notes: readonly CalendarNote[]
    }
  | { readonly kind: 'doubled'; readonly line: number }
  | {
      readonly kind: 'question'
      readonly why: CalendarQuestion
      readonly candidates: readonly KnownCalendarSession[]
    }
  | { readonly kind: 'problem'; readonly problems: readonly string[] }
  | { readonly kind: 'passedOver'; readonly why: string }
  | { readonly kind: 'leftOut' }

export type CalendarPlan = readonly { readonly line: number; readonly outcome: CalendarOutcome }[]

export type CalendarPlanning = {
  readonly sessions: readonly KnownCalendarSession[]
  readonly seasons: readonly DaySpan[]
  readonly today: Day
  readonly countsGoals: boolean
  /** By line: `new`, `leaveOut`, or the id of a session. */
  readonly answers: ReadonlyMap<number, string>
}

/** Whether all of it can be written: no open question, no problem, and something to write. */
export function isCalendarReady(plan: CalendarPlan): boolean {
  return (
    plan.every(({ outcome }) => outcome.kind !== 'question' && outcome.kind !== 'problem') &&
    plan.some(({ outcome }) => outcome.kind === 'new' || isChanged(outcome))
  )
}

export function isChanged(outcome: CalendarOutcome): boolean {
  return outcome.kind === 'known' && Object.keys(outcome.change).length > 0
}
