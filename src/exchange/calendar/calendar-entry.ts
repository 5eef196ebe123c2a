import type { Day, Seconds } from '#common/time'
import type { Goals } from '#match/goals'

export const calendarFields = [
  'date',
  'time',
  'kind',
  'title',
  'opponent',
  'homeTeam',
  'awayTeam',
  'side',
  'place',
  'lengthMinutes',
  'result',
  /** The home side's goals come first, as in lists of fixtures. */
  'resultHomeFirst',
  'ourGoals',
  'theirGoals',
  'session',
] as const
export type CalendarField = (typeof calendarFields)[number]

/** A practice or match as a row of a calendar tells of it; null or empty: the row says nothing of it. */
export type CalendarEntry = {
  readonly day: Day
  readonly startsAt: string | null
  readonly kind: 'practice' | 'match'
  /** Of a match: against whom. */
  readonly title: string
  readonly place: string
  /** Only home or away is said, no ground: not worth more than what the book has. */
  readonly isSideOnly: boolean
  readonly lengthSeconds: Seconds | null
  readonly goals: Goals | null
  /** Code or id of the session. */
  readonly code: string | null
}
