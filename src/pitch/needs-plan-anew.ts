import { placedIn } from '#pitch/changeover'
import type { PitchState } from '#pitch/pitch-state'
import { seatedIn } from '#pitch/played-turns'
import { isHere } from '#pitch/request-now'

/**
 * Whether what is left of the plan no longer fits who is here: somebody with a place is not, or the plan does not count
 * on somebody who is: it has no place in any turn to come, and has had none since it came.
 */
export function needsPlanAnew(state: PitchState): boolean {
  const from = state.live ? state.live.index + 1 : state.next?.index
  if (!state.plan || from === undefined || state.status === 'ended' || from >= state.turns.length)
    return false
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
  const isCountedOn = (player: PitchState['players'][number]) =>
    placed.has(player.playerId) || hasPlayedSinceItCame(state, player)
  return (
    [...placed].some((id) => gone.has(id) && !awaited.has(id)) ||
    state.players.some((player) => isHere(player) && !isCountedOn(player))
  )
}

/** Whoever waits through the last balls of a plan that gave it its turns before has no need of another plan. */
function hasPlayedSinceItCame(
  { played, live }: PitchState,
  { playerId, segments }: PitchState['players'][number],
): boolean {
  const came = segments.at(-1)?.from ?? 0
  const parts = [...played.flatMap((turn) => turn.parts), ...(live ? [live] : [])]
  return parts.some(({ start, stations }) => start >= came && seatedIn(stations).includes(playerId))
}
