import type { Day } from '#common/time'

/** One entry of a calendar. */
export type CalendarEvent = {
  /** The same for as long as the entry lives, and nobody else's. */
  readonly uid: string
  /** How often it was changed, and when last. */
  readonly revision: number
  readonly revisedAt: Date
  readonly when: EventTime
  readonly summary: string
  /** Empty: not known. */
  readonly place: string
  /** Empty: none. */
  readonly description: string
  readonly isCancelled: boolean
}

/** A whole day where no time is known; without an end where no length is. */
export type EventTime =
  | { readonly kind: 'day'; readonly day: Day }
  | { readonly kind: 'time'; readonly start: Date; readonly end: Date | null }
