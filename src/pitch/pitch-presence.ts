import type { Seconds } from '#common/time'
import type { RegisteredPlayer } from '#pitch/pitch-register'
import type { PresenceLine } from '#squad/presence'
import type { RegisterLine } from '#squad/register'
import { linesOfEntries } from '#squad/register-segments'

/** Every line of the register of a practice that ends at `end`. */
export function linesOfPlayers(
  players: readonly Pick<RegisteredPlayer, 'playerId' | 'segments'>[],
  end: Seconds,
): readonly RegisterLine[] {
  return linesOfEntries(players, end).flatMap((line) => {
    const to = Math.min(line.to, end)
    return line.from < to ? [{ ...line, to }] : []
  })
}

/** From when to when players could be given a turn, in a practice that ends at `end`. */
export function presenceOfPlayers(
  players: readonly Pick<RegisteredPlayer, 'playerId' | 'segments'>[],
  end: Seconds,
): readonly PresenceLine[] {
  return linesOfPlayers(players, end)
    .filter(({ state }) => state === 'here')
    .map(({ playerId, from, to }) => ({ playerId, from, to }))
}
