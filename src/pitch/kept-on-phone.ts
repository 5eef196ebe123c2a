import type { EpochMs } from '#pitch/pitch-event'
import type { PitchViewer } from '#pitch/pitch-pack'

const dayMs = 24 * 60 * 60 * 1000

/**
 * Whether a practice is to be taken off a phone. A coach's phone keeps it for two weeks after it was fetched last, and
 * what waits to be sent keeps it there. A helper's phone keeps it for a day: its code is over by then, and nothing that
 * still waits could be sent any more.
 */
export function isToForget(
  kept: {
    readonly viewerKind: PitchViewer['kind']
    readonly fetchedAt: EpochMs
    /** How many taps were not sent yet. */
    readonly waiting: number
  },
  now: EpochMs,
): boolean {
  const { viewerKind, fetchedAt, waiting } = kept
  if (viewerKind === 'helper') return fetchedAt < now - dayMs
  return waiting === 0 && fetchedAt < now - 14 * dayMs
}
