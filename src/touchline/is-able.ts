import type { Seconds } from '#common/time'
import type { WalkedPlayer } from '#touchline/walked-register'

/** Here, and may be put on. */
export function isAble({ state, sentOff }: Pick<WalkedPlayer, 'state' | 'sentOff'>): boolean {
  return state === 'here' && sentOff === null
}

/** The same for a second of the plan that is to come: whoever is expected by then will be. */
export function isAbleAt(
  player: Pick<WalkedPlayer, 'state' | 'sentOff' | 'expectedFrom'>,
  planSecond: Seconds,
): boolean {
  return isAble(player) || (player.expectedFrom !== null && player.expectedFrom <= planSecond)
}
