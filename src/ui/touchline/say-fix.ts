import type { PlayerId } from '#squad/player'
import type { PromiseFix } from '#touchline/promise-watch'
import { clockWords } from '#ui/pitch/clock-words'

/** "Bring Bo on for Ana at 30:00": the change that keeps a promise, for its button. */
export function sayFix(
  { off, clock }: Pick<PromiseFix, 'off' | 'clock'>,
  {
    playerId,
    now,
    nameOf,
  }: {
    readonly playerId: PlayerId
    /** The period that runs and its second; null: none runs. */
    readonly now: { readonly period: number; readonly second: number } | null
    readonly nameOf: (id: PlayerId) => string
  },
): string {
  const who = `Bring ${nameOf(playerId)} on${off ? ` for ${nameOf(off)}` : ''}`
  if (clock.period !== now?.period)
    return clock.second === 0
      ? `${who} at the next kick-off`
      : `${who} in the next period, at ${clockWords(clock.second)}`
  return clock.second <= now.second ? `${who} now` : `${who} at ${clockWords(clock.second)}`
}
