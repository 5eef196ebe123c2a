import { InvariantError } from '#common/result'
import { type Seconds, secondsInMinute } from '#common/time'
import type { Station, Turn } from '#practice/turn'
import type { ThemeId } from '#themes/theme'

/** A free game as a coach enters it: who played which side, who kept goal, and for how long. */
export type FreeGame = {
  readonly start: Seconds
  /** Whole minutes, at least one. */
  readonly minutes: number
  /** Each game that runs at the same time; `attack` and `defend` are its two sides. */
  readonly games: readonly Station[]
  readonly themeId: ThemeId | null
  readonly round?: string | null
}

/**
 * A free game as two turns of equal length. In the second the sides have swapped attack and defend, keepers stay, and
 * whoever waits goes on with the same wait.
 * @throws InvariantError when the minutes are not a whole number of at least one.
 */
export function turnsOfFreeGame(game: FreeGame): readonly [Turn, Turn] {
  if (!Number.isInteger(game.minutes) || game.minutes < 1) {
    throw new InvariantError('A free game lasts whole minutes, at least one.', { minutes: game.minutes })
  }
  const half = (game.minutes * secondsInMinute) / 2
  const both = { themeId: game.themeId, round: game.round ?? null }
  const middle = game.start + half
  return [
    { ...both, start: game.start, end: middle, stations: game.games },
    { ...both, start: middle, end: middle + half, stations: game.games.map(swapSides), continuesWait: true },
  ]
}

function swapSides(station: Station): Station {
  return { attack: station.defend, defend: station.attack, keep: station.keep }
}
