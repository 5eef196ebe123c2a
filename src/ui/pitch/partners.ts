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

/** With whom somebody may change places; places that are alike are not exchanged. `mayStand`: whether the change may be made. */
export function swapPartners(of: {
  readonly playerId: PlayerId
  readonly state: Pick<PitchState, 'waiting'>
  readonly stations: readonly Station[]
  readonly mayStand: (other: PlayerId) => boolean
}): readonly PlayerId[] {
  const placed = placedIn(of.stations)
  const own = placed.find(({ playerId }) => playerId === of.playerId) ?? null
  const seated = placed.filter(
    ({ playerId, role, station }) =>
      playerId !== of.playerId && !(own?.role === role && own.station === station),
  )
  const free = own ? freePlayers(of.state, of.stations) : []
  return [...free, ...seated.map(({ playerId }) => playerId)].filter(of.mayStand)
}

/**
 * Whether nothing stands against these places of two who change them, turn by turn: neither comes into goal who does not
 * keep, and none of the two comes to one area with somebody it is kept apart from. Others stand where they stood.
 */
export function mayStandAt(
  pack: Known,
  plan: PracticePlan | null,
): (changed: readonly PlayerId[], turns: readonly (readonly Station[])[]) => boolean {
  const mayKeep = mayKeepGoal(pack, plan)
  const apart = plan?.apart ?? []
  return (changed, turns) => {
    const isTogether = ({ attack, defend, keep }: Station, pair: readonly PlayerId[]) =>
      pair.some((id) => changed.includes(id)) &&
      pair.every((id) => [...attack, ...defend, ...keep].includes(id))
    return turns.every((stations) =>
      stations.every(
        (station) =>
          station.keep.every((id) => !changed.includes(id) || mayKeep(id)) &&
          !apart.some((pair) => isTogether(station, pair)),
      ),
    )
  }
}
