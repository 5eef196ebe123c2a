import type { Changeover } from '#pitch/changeover'
import type { RunningTotal } from '#pitch/running-totals'
import type { AreaShape, DesignRound, Ending, SizeChoice } from '#practice/design'
import { type SeatRole, type Station, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'
import { counted } from '#ui/plural'

/** The places of a turn once its size is chosen, and who steps off for it. */
export type Sized = { readonly stations: readonly Station[]; readonly stepsOff: readonly PlayerId[] }

/** In every area the places that the chosen size has. Whoever has had most turns of the role today steps off; of equals, the last named. */
export function sized(
  stations: readonly Station[],
  shape: AreaShape,
  totals: readonly Pick<RunningTotal, 'playerId' | 'turns'>[],
): Sized {
  const had = new Map(totals.map(({ playerId, turns }) => [playerId, turns]))
  const stepsOff: PlayerId[] = []
  const keep = (station: Station, role: SeatRole): readonly PlayerId[] => {
    const byTurns = station[role]
      .map((id, place) => ({ id, place, turns: had.get(id)?.[role] ?? 0 }))
      .sort((a, b) => a.turns - b.turns || a.place - b.place)
    const off = new Set(byTurns.slice(shape[role]).map(({ id }) => id))
    stepsOff.push(...station[role].filter((id) => off.has(id)))
    return station[role].filter((id) => !off.has(id))
  }
  const kept = stations.map((station) => {
    const [attack, defend, goal] = seatRoles.map((role) => keep(station, role))
    return { attack: attack ?? [], defend: defend ?? [], keep: goal ?? [] }
  })
  return { stations: kept, stepsOff }
}

/** "2 against 1, 1 point". */
export function sizeWords({ shape, points }: SizeChoice): string {
  const goal = shape.keep > 0 ? ' and a keeper' : ''
  return `${shape.attack} against ${shape.defend}${goal}, ${counted(points, 'point')}`
}

/** What an ending is worth: in a choice turn the attackers' is worth what the chosen size says. */
export function pointsOf(ending: Ending, round: DesignRound, size: number | null): number {
  const chosen = size === null ? null : (round.choice?.sizes[size] ?? null)
  return chosen && ending.side === 'attack' && ending.points > 0 ? chosen.points : ending.points
}

/** Who comes on and who steps off once a size is chosen: who steps off for it does not come on for this ball. */
export function withoutSteppingOff(
  { on, off }: Pick<Changeover, 'on' | 'off'>,
  stepsOff: readonly PlayerId[],
): Pick<Changeover, 'on' | 'off'> {
  const steps = new Set(stepsOff)
  const came = new Set(on.map(({ playerId }) => playerId))
  return {
    on: on.filter(({ playerId }) => !steps.has(playerId)),
    off: [...off, ...stepsOff.filter((playerId) => !came.has(playerId))],
  }
}
