import { placedIn } from '#pitch/changeover'
import type { PitchState } from '#pitch/pitch-state'
import { isHere } from '#pitch/request-now'

/**
 * Whether what is left of the plan no longer fits who is here: somebody with a place is not, or somebody who is here has
 * no place in any turn to come.
 */
export function needsPlanAnew(state: PitchState): boolean {
  const from = state.live ? state.live.index + 1 : state.next?.index
  if (!state.plan || from === undefined || state.status === 'ended' || from >= state.turns.length)
    return false
  const here = new Set(state.players.filter(isHere).map(({ playerId }) => playerId))
  const gone = new Set(
    state.players
      .filter((player) => !isHere(player) && (player.state !== 'missing' || state.isRegisterTaken))
      .map(({ playerId }) => playerId),
  )
  const awaited = new Set(
    state.plan.players
      .filter(({ present }) => (present[0]?.[0] ?? 1) > from + 1)
      .map(({ playerId }) => playerId)
      .filter((id) => state.players.find(({ playerId }) => playerId === id)?.state === 'missing'),
  )
  const placed = new Set(
    state.turns
      .slice(from)
      .flatMap(({ stations }) => placedIn(stations))
      .map((one) => one.playerId),
  )
  return [...placed].some((id) => gone.has(id) && !awaited.has(id)) || [...here].some((id) => !placed.has(id))
}
