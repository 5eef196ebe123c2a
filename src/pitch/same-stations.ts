import { type Station, seatRoles } from '#practice/turn'

/** The same players in the same places, in the same order. */
export function isSameStations(one: readonly Station[], other: readonly Station[]): boolean {
  return (
    one.length === other.length &&
    one.every((station, index) =>
      seatRoles.every((role) => {
        const others = other[index]?.[role] ?? []
        return (
          station[role].length === others.length && station[role].every((id, place) => id === others[place])
        )
      }),
    )
  )
}
