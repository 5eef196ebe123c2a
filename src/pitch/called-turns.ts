import type { PitchState } from '#pitch/pitch-state'

/**
 * How many turns from the next on are called already, so that a new rotation changes nothing in them but the places of
 * those who left: before the beginning none; ball by ball the one on the screen and the next; else the whole round on the
 * screen. So whoever comes late waits in what is called, and has places at the earliest in the turn after, or in the next
 * round.
 */
export function calledTurns(
  state: Pick<PitchState, 'status' | 'live' | 'nextRound'>,
  isBallByBall: boolean,
): number {
  if (state.status === 'notBegun') return 0
  return isBallByBall || state.live ? 2 : (state.nextRound?.turns.length ?? 0)
}

/** First turn of the plan that nobody has called yet. */
export function firstUncalled(
  state: Pick<PitchState, 'status' | 'live' | 'next' | 'nextRound' | 'turns'>,
  isBallByBall: boolean,
): number {
  const from = state.live?.index ?? state.next?.index ?? state.turns.length
  return from + calledTurns(state, isBallByBall)
}
