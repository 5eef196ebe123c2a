import type { MatchFigure, MatchFigures } from '#fairness/matches/match-figure'
import { noise } from '#fairness/noise'

/** Why a player may have had less than what everyone is promised, as far as the book knows; null: it was there throughout. */
export type BelowReason = 'late' | 'left' | 'out' | 'agreed' | null

/** A match in which a player had less than what everyone is promised. */
export type BelowPromise = {
  readonly sessionId: string
  readonly figure: MatchFigure
  readonly reason: BelowReason
}

/** Every time that a member had less than the promise, in the order of the matches. Guests are outside it. */
export function belowPromise(matches: readonly MatchFigures[]): readonly BelowPromise[] {
  return matches.flatMap(({ sessionId, figures }) =>
    figures
      .filter(({ isMember, leastSeconds, playedSeconds }) => isMember && leastSeconds - playedSeconds > noise)
      .map((figure) => ({ sessionId, figure, reason: belowReason(figure) })),
  )
}

export function belowReason({
  attendance,
  isAgreed,
}: Pick<MatchFigure, 'attendance' | 'isAgreed'>): BelowReason {
  if (attendance === 'late' || attendance === 'left' || attendance === 'out') return attendance
  return isAgreed ? 'agreed' : null
}
