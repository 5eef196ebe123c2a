import type { Seconds } from '#common/time'

/** The middle length of a squad's written practice turns, the mean of the two middle ones for an even count; null without any. */
export function medianTurnSeconds(
  turns: readonly { readonly start: Seconds; readonly end: Seconds }[],
): number | null {
  const lengths = turns.map((turn) => turn.end - turn.start).sort((a, b) => a - b)
  const half = lengths.length / 2
  const lower = lengths[Math.ceil(half) - 1]
  const upper = lengths[Math.floor(half)]
  return lower === undefined || upper === undefined ? null : (lower + upper) / 2
}
