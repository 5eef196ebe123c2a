import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'

/** Which parts of the time they were there players had on the pitch: the least and the most, 0 to 1. */
export type ShareRange = {
  readonly least: { readonly playerId: PlayerId; readonly share: number }
  readonly most: { readonly playerId: PlayerId; readonly share: number }
}

/** Null where nobody was there. Of equals the first stands for all. */
export function shareRange(
  of: readonly {
    readonly playerId: PlayerId
    readonly thereSeconds: Seconds
    readonly playedSeconds: number
  }[],
): ShareRange | null {
  const shares = of
    .filter(({ thereSeconds }) => thereSeconds > 0)
    .map(({ playerId, thereSeconds, playedSeconds }) => ({ playerId, share: playedSeconds / thereSeconds }))
  const [first, ...others] = shares
  if (!first) return null
  return {
    least: others.reduce((least, own) => (own.share < least.share ? own : least), first),
    most: others.reduce((most, own) => (own.share > most.share ? own : most), first),
  }
}
