import type { Seconds } from '#common/time'
import { wholeTurns } from '#exposure/whole-turns'

/** The middle length of a squad's written practice turns (parts of one turn together; each practice's in order), the mean of the two middle ones for an even count; null without any. */
export function medianTurnSeconds(
  turns: readonly { readonly start: Seconds; readonly end: Seconds; readonly continuesTurn?: boolean }[],
): number | null {
  const lengths = wholeTurns(turns)
    .map((parts) => (parts.at(-1) ?? parts[0]).end - parts[0].start)
    .sort((a, b) => a - b)
  const half = lengths.length / 2
  const lower = lengths[Math.ceil(half) - 1]
  const upper = lengths[Math.floor(half)]
  return lower === undefined || upper === undefined ? null : (lower + upper) / 2
}
