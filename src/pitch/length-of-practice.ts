import type { Seconds } from '#common/time'

/** What is known of the length of a practice, in seconds from its beginning. */
export type LengthKnown = {
  /** To the stop; null: nobody tapped one. */
  readonly stopped: Seconds | null
  /** Where the last turn ended; 0: there is none. */
  readonly lastEnd: Seconds
  /** As it was announced, or stands in the book; null: neither. */
  readonly stated: Seconds | null
  /** As the coach says afterwards; null: not asked, or not answered. */
  readonly answered: Seconds | null
}

/** A question to the coach: nothing that was tapped says how long the practice was. */
export type LengthAsked = {
  /** `stoppedLate`: hours after everything else. `notKnown`: there is a register, and nothing to end it. */
  readonly why: 'stoppedLate' | 'notKnown'
  readonly stopped: Seconds | null
  /** What it was as far as can be told; null: nothing tells. */
  readonly proposed: Seconds | null
}

/** A stop so long after the last turn and the stated end was forgotten and tapped later. Our own judgement, no source. */
const forgottenAfter = 3600
/** Without a turn and a stated length: longer than any practice of children. Our own judgement, no source. */
const longestUntold = 4 * 3600

/** Whether a stop was tapped so late that it says nothing of what had been going on until then. */
export function isForgotten(stopped: Seconds, until: Seconds): boolean {
  return stopped - until > forgottenAfter
}

/**
 * The length of a practice, never less than was played: as the coach says, else to the stop, else as stated. A forgotten
 * stop counts for nothing: the practice ended with its last turn, or as stated where that is later. Null: nothing tells.
 */
export function lengthOfPractice(known: LengthKnown): Seconds | null {
  const { stopped, lastEnd, stated, answered } = known
  if (answered !== null) return Math.max(answered, lastEnd)
  if (stopped !== null && stopped > 0 && !isStoppedLate(known)) return stopped
  if (stated !== null) return Math.max(stated, lastEnd)
  return stopped !== null && stopped > 0 && lastEnd > 0 ? lastEnd : null
}

/** What the coach has to be asked; null: nothing. `hasRegister`: somebody was tapped as here. */
export function lengthAsked(
  known: Omit<LengthKnown, 'answered'>,
  { hasRegister }: { readonly hasRegister: boolean },
): LengthAsked | null {
  const proposed = lengthOfPractice({ ...known, answered: null })
  const { stopped } = known
  if (isStoppedLate(known)) return { why: 'stoppedLate', stopped, proposed }
  return hasRegister && known.lastEnd === 0 && proposed === null
    ? { why: 'notKnown', stopped: null, proposed }
    : null
}

function isStoppedLate({ stopped, lastEnd, stated }: Omit<LengthKnown, 'answered'>): boolean {
  if (stopped === null) return false
  const until = Math.max(lastEnd, stated ?? 0)
  return until > 0 ? isForgotten(stopped, until) : stopped > longestUntold
}
