import type { AreaShape } from '#practice/design'
import { type SeatRole, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** Who takes turns at what: one queue of a role for an area, or for all areas together. */
export type Queue = {
  readonly role: SeatRole
  /** From 1; null: any area. */
  readonly area: number | null
  readonly playerIds: readonly PlayerId[]
}

export type Seating = { readonly playerId: PlayerId; readonly role: SeatRole; readonly area: number }

/**
 * One turn of a round in which players take turns in order: each queue gives its first players who are there, who then
 * go to its end. Who is not there yet keeps its place and goes on as soon as it comes.
 */
export function takeTurn(
  queues: readonly Queue[],
  turn: {
    readonly areas: number
    readonly shapes: readonly AreaShape[]
    readonly present: ReadonlySet<PlayerId>
  },
): { readonly seated: readonly Seating[]; readonly queues: readonly Queue[] } {
  const seated: Seating[] = []
  const after = queues.map((queue) => {
    const areas = queue.area === null ? Array.from({ length: turn.areas }, (_, at) => at + 1) : [queue.area]
    const places = areas.flatMap((area) => {
      const shape = turn.shapes[area - 1] ?? turn.shapes.at(-1)
      return Array.from({ length: shape?.[queue.role] ?? 0 }, () => area)
    })
    const taken = queue.playerIds.filter((id) => turn.present.has(id)).slice(0, places.length)
    taken.forEach((playerId, index) => {
      seated.push({ playerId, role: queue.role, area: places[index] ?? 1 })
    })
    return { ...queue, playerIds: [...queue.playerIds.filter((id) => !taken.includes(id)), ...taken] }
  })
  return { seated, queues: after }
}

/**
 * The queues at the start of a round: who has waited longest is first, who has not played yet before everyone, else in
 * the order of the rows. A role whose players all have an area written has a queue for each area, else one for all.
 */
export function queuesOf(
  marked: readonly (Omit<Seating, 'area'> & { readonly area: number | null })[],
  lastPlayed: ReadonlyMap<PlayerId, number>,
): readonly Queue[] {
  return seatRoles.flatMap((role) => {
    const own = marked
      .filter((player) => player.role === role)
      .toSorted((one, other) => (lastPlayed.get(one.playerId) ?? -1) - (lastPlayed.get(other.playerId) ?? -1))
    const areas = own.every((player) => player.area !== null)
      ? [...new Set(own.map((player) => player.area))]
      : [null]
    return areas.map((area) => ({
      role,
      area,
      playerIds: own
        .filter((player) => area === null || player.area === area)
        .map((player) => player.playerId),
    }))
  })
}
