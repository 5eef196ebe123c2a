import type { MatchFigure, MatchFigures } from '#fairness/matches/match-figure'
import { noise } from '#fairness/noise'

/** Why a player may have had less than what everyone is promised, as far as the book knows; null: it was there throughout. */
export type BelowReason = 'late' | 'left' | 'out' | 'notPlaying' | 'agreed' | null

/** A match in which a player had less than what everyone is promised. */
export type BelowPromise = {
  readonly sessionId: string
  readonly figure: MatchFigure
  readonly reason: BelowReason
}

/** Every time that a member had less than the promise, in the order of the matches. Guests are outside it. */
export function belowPromise(matches: readonly MatchFigures[]): readonly BelowPromise[] {
  return matches.flatMap(({ sessionId, wholeSeconds, figures }) =>
    figures
      .filter(({ isMember, leastSeconds, playedSeconds }) => isMember && leastSeconds - playedSeconds > noise)
      .map((figure) => ({ sessionId, figure, reason: belowReason({ ...figure, wholeSeconds }) })),
  )
}

/** `thereSeconds` of the match's `wholeSeconds`: who is here and could not play for some of it has less of them. */
export function belowReason({
  attendance,
  thereSeconds,
  wholeSeconds,
  isAgreed,
}: Pick<MatchFigure, 'attendance' | 'thereSeconds' | 'isAgreed'> &
  Pick<MatchFigures, 'wholeSeconds'>): BelowReason {
  if (attendance === 'late' || attendance === 'left' || attendance === 'out') return attendance
  if (wholeSeconds - thereSeconds > noise) return 'notPlaying'
  return isAgreed ? 'agreed' : null
}
