import type { Day, Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'

/** A player's playing time in the matches of one day, all its squads together. */
export type PlayedDay = {
  readonly playerId: PlayerId
  readonly day: Day
  readonly matches: number
  readonly playedSeconds: Seconds
}

/** The days on which somebody played longer than the format allows in one day, in the order given. */
export function longDays(days: readonly PlayedDay[], mostSecondsADay: Seconds | null): readonly PlayedDay[] {
  return mostSecondsADay === null ? [] : days.filter(({ playedSeconds }) => playedSeconds > mostSecondsADay)
}
