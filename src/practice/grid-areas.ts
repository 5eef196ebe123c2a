import { accept, type Result, refuse } from '#common/result'
import type { GridColumn } from '#practice/grid'
import { type Mark, placeOf } from '#practice/grid-mark'
import { type SeatRole, seatRoles } from '#practice/turn'
import type { PlayerId } from '#squad/player'

/** A player's place in a column; areas are counted from 1. */
export type Placing = { readonly playerId: PlayerId; readonly role: SeatRole; readonly area: number }

/** Players of one role cannot be spread over the areas alike, and no numbers say who was where. */
export type AreasRefusal = {
  readonly reason: 'areasDoNotFit'
  readonly role: 'attack' | 'defend'
  readonly count: number
  readonly areas: number
}

export type Marked = { readonly playerId: PlayerId; readonly mark: Mark }

/** How many areas a column plays in: what it says, or more when a number behind a letter asks for more. */
export function areasOf(column: Pick<GridColumn, 'areas'>, marked: readonly Marked[]): number {
  return Math.max(column.areas, ...marked.map(({ mark }) => placeOf(mark)?.area ?? 1))
}

/**
 * Everyone's area. Numbers behind the letters decide. Attackers and defenders without one are spread so that all areas
 * are alike, in the order of the rows: then it makes no difference to anyone's situation who stood in which. Where that
 * cannot be done, the numbers are needed. Keepers have no situation and go where there are fewest.
 */
export function placeInAreas(
  marked: readonly Marked[],
  areas: number,
): Result<readonly Placing[], AreasRefusal> {
  const placed = marked.flatMap(({ playerId, mark }) => {
    const place = placeOf(mark)
    return place ? [{ playerId, ...place, area: areas === 1 ? 1 : place.area }] : []
  })
  const byRole = (role: SeatRole) => placed.filter((place) => place.role === role)
  const sides = [byRole('attack'), byRole('defend')].flat()
  const refusals = sides.every((place) => place.area !== null)
    ? []
    : seatRoles.flatMap((role) => misfit(byRole(role), role, areas))
  if (refusals.length > 0) return refuse(...refusals)
  return accept(seatRoles.flatMap((role) => fill(byRole(role), areas)))
}

type HalfPlaced = Omit<Placing, 'area'> & { readonly area: number | null }

function misfit(places: readonly HalfPlaced[], role: SeatRole, areas: number): AreasRefusal[] {
  if (role === 'keep') return []
  const alike = places.length / areas
  const isCrowded = countByArea(places, areas).some((count) => count > alike)
  return Number.isInteger(alike) && !isCrowded
    ? []
    : [{ reason: 'areasDoNotFit', role, count: places.length, areas }]
}

/** Who has no number goes to the first area with the fewest. */
function fill(places: readonly HalfPlaced[], areas: number): readonly Placing[] {
  const counts = countByArea(places, areas)
  return places.map((place) => {
    if (place.area !== null) return { ...place, area: place.area }
    const fewest = counts.indexOf(Math.min(...counts))
    counts[fewest] = (counts[fewest] ?? 0) + 1
    return { ...place, area: fewest + 1 }
  })
}

function countByArea(places: readonly HalfPlaced[], areas: number): number[] {
  return Array.from(
    { length: areas },
    (_, index) => places.filter((place) => place.area === index + 1).length,
  )
}
