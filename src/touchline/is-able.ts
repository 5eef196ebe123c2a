import type { WalkedPlayer } from '#touchline/walked-register'

/** Here, and may be put on. */
export function isAble({ state, sentOff }: Pick<WalkedPlayer, 'state' | 'sentOff'>): boolean {
  return state === 'here' && sentOff === null
}
