import { placedIn } from '#pitch/changeover'
import type { PitchState } from '#pitch/pitch-state'
import { isHere } from '#pitch/request-now'
import type { PlayerId } from '#squad/player'

/**
 * Who was planned to leave by now, is here all the same, and has no place any more: it has gone and nobody tapped it, or
 * it stays and wants a new rotation.
 */
export function wasToLeave(
  state: Pick<PitchState, 'plan' | 'players' | 'turns' | 'live' | 'next' | 'status'>,
): readonly PlayerId[] {
  const from = firstToCome(state)
  if (!state.plan || state.status !== 'running' || from >= state.turns.length) return []
  const placed = new Set(
    state.turns
      .slice(from)
      .flatMap(({ stations }) => placedIn(stations))
      .map(({ playerId }) => playerId),
  )
  const here = new Set(state.players.filter(isHere).map(({ playerId }) => playerId))
  return state.plan.players
    .filter(({ present }) => isPast(present, from))
    .map(({ playerId }) => playerId)
    .filter((id) => here.has(id) && !placed.has(id))
}

/** Whether the last turn that somebody was expected for comes before one, from 0. */
export function isPast(present: readonly (readonly [number, number])[], turn: number): boolean {
  return (present.at(-1)?.[1] ?? 0) <= turn
}

/** Place of the first turn that has not begun. */
export function firstToCome({ live, next, turns }: Pick<PitchState, 'live' | 'next' | 'turns'>): number {
  return live ? live.index + 1 : (next?.index ?? turns.length)
}
