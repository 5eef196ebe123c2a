import type { Seconds } from '#common/time'
import type { MatchLine, Role, Situation } from '#exposure/column'
import type { PlayerId } from '#squad/player'
import type { ThemeId } from '#themes/theme'

/** A kind of seat in a span. `middle` is a role only here: the book splits it between attack and defend. */
export type SeatColumn = {
  readonly role: Exclude<Role, 'rest'> | 'middle'
  readonly situation: Situation | null
  readonly line: MatchLine | null
}

/** Everyone who sits in one column of a span; never empty. */
export type Seats = { readonly column: SeatColumn; readonly playerIds: readonly PlayerId[] }

/** Live time in which nobody changes place: a turn of a practice, or a match between two changes. Half-open. */
export type Span = {
  readonly start: Seconds
  readonly end: Seconds
  readonly themeId: ThemeId | null
  /** Who is there for the whole of it. */
  readonly present: readonly PlayerId[]
  /** One entry a column. */
  readonly seats: readonly Seats[]
  /** Present without a seat. */
  readonly resting: readonly PlayerId[]
  /** A turn of a practice counts as one; match time counts no turns. */
  readonly turnCount: 0 | 1
  readonly continuesWait: boolean
  /** The same turn as the span before it, with other places. */
  readonly continuesTurn: boolean
}

export function spanLength(span: Pick<Span, 'start' | 'end'>): Seconds {
  return span.end - span.start
}
