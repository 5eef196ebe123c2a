import { placedIn } from '#pitch/changeover'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import type { PracticePlan } from '#planning/practice-plan'
import type { Station } from '#practice/turn'
import type { PlayerId } from '#squad/player'

type Known = Pick<PitchPack, 'players'>

/** Who may be put in goal today. A new face may: nobody has said otherwise. */
export function mayKeepGoal(pack: Known, plan: PracticePlan | null): (playerId: PlayerId) => boolean {
  const planned = new Map((plan?.players ?? []).map((player) => [player.playerId, player]))
  const known = new Map(pack.players.map((player) => [player.id, player]))
  return (playerId) => {
    const today = planned.get(playerId)
    return today ? today.keeps && !today.notInGoal : (known.get(playerId)?.keeps ?? true)
  }
}

/** Who is here to play and has no place, whoever waits longest first. */
export function freePlayers(
  state: Pick<PitchState, 'waiting'>,
  stations: readonly Station[],
): readonly PlayerId[] {
  const placed = new Set(placedIn(stations).map(({ playerId }) => playerId))
  return state.waiting.map(({ playerId }) => playerId).filter((id) => !placed.has(id))
}

/** With whom somebody may change places: nobody comes into goal who does not keep, and places that are alike are not exchanged. */
export function swapPartners(of: {
  readonly playerId: PlayerId
  readonly pack: Known
  readonly state: PitchState
  readonly stations: readonly Station[]
}): readonly PlayerId[] {
  const placed = placedIn(of.stations)
  const own = placed.find(({ playerId }) => playerId === of.playerId) ?? null
  const mayKeep = mayKeepGoal(of.pack, of.state.plan)
  const mayTakeOwn = (id: PlayerId) => own?.role !== 'keep' || mayKeep(id)
  const seated = placed.filter(
    ({ playerId, role, station }) =>
      playerId !== of.playerId &&
      (role !== 'keep' || mayKeep(of.playerId)) &&
      !(own?.role === role && own.station === station),
  )
  const free = own ? freePlayers(of.state, of.stations) : []
  return [...free, ...seated.map(({ playerId }) => playerId)].filter(mayTakeOwn)
}
