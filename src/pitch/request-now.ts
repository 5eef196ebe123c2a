import type { KnownPlayer } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { expectedPlayer } from '#planning/new-request'
import type { PlannedPlayer, PlanRequest, PracticePlan } from '#planning/practice-plan'
import { smallerSide } from '#planning/split-sides'
import { rotationColumns } from '#rotation/problem'
import type { PlayerId } from '#squad/player'

/** The plan's players with who came besides; who is here now is here to the end, unless it was to leave early. */
export function requestNow(
  state: PitchState & { readonly plan: PracticePlan },
  known: readonly KnownPlayer[],
): PlanRequest {
  const { plan } = state
  const planned = new Set(plan.players.map(({ playerId }) => playerId))
  const keeps = new Map(known.map((player) => [player.id, player.keeps]))
  const others = state.players
    .filter(({ playerId, segments }) => !planned.has(playerId) && segments.length > 0)
    .map(({ playerId }) =>
      expectedPlayer({ playerId, keeps: keeps.get(playerId) ?? false, gap: nothingOwed }, state.turns.length),
    )
  const players = plan.players.map((player) => ({
    ...player,
    keeps: player.keeps || hasKept(state, player.playerId),
  }))
  const here = new Set(state.players.filter(isHere).map(({ playerId }) => playerId))
  for (const player of others) {
    // A new face gets a bib of the side with fewer of those who are here.
    const side = plan.design.sides ? smallerSide(players.filter(({ playerId }) => here.has(playerId))) : null
    players.push({ ...player, side })
  }
  return { ...plan, players }
}

const nothingOwed = Object.fromEntries(rotationColumns.map((column) => [column, 0])) as PlannedPlayer['gap']

/** Whoever kept today counts as able for today, as in the book. */
function hasKept({ played, live }: PitchState, playerId: PlayerId): boolean {
  return [...played.flatMap(({ parts }) => parts), ...(live ? [live] : [])].some(({ stations }) =>
    stations.some(({ keep }) => keep.includes(playerId)),
  )
}

/** Here to play. */
export function isHere({ state, isOut }: PitchState['players'][number]): boolean {
  return state === 'here' && !isOut
}
