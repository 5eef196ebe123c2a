import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import type { WalkedPlayer } from '#touchline/walked-register'

/** What happens to a player at a second of a period without a tap. */
export type Untapped = {
  readonly id: PlayerId
  readonly second: Seconds
  readonly what: 'comes' | 'leaves' | 'isMarked'
}

/**
 * The next who is back from being sent off, comes or leaves as planned, or is as the book's register says, up to a second
 * of a period. `starts`: of that period, in playing time, in the plan's and in the book's.
 */
export function nextUntapped(
  players: readonly WalkedPlayer[],
  starts: { readonly playing: Seconds; readonly plan: Seconds; readonly book: Seconds },
  until: Seconds,
): Untapped | undefined {
  return players
    .flatMap(({ id, sentOff, expectedFrom, expectedUntil, mark }): Untapped[] => {
      const at = (second: Seconds | null, start: Seconds, what: Untapped['what']): Untapped[] =>
        second === null ? [] : [{ id, second: Math.max(0, second - start), what }]
      return [
        ...at(mark?.from ?? null, starts.book, 'isMarked'),
        ...at(sentOff?.until ?? null, starts.playing, 'comes'),
        ...at(expectedFrom, starts.plan, 'comes'),
        ...at(expectedUntil, starts.plan, 'leaves'),
      ]
    })
    .filter(({ second }) => second <= until)
    .sort((one, other) => one.second - other.second)[0]
}
