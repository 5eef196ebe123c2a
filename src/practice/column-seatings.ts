import { accept, type Result, refuse } from '#common/result'
import type { Interval } from '#common/time'
import type { AreaShape } from '#practice/design'
import type { GridColumn } from '#practice/grid'
import { areasOf, type Marked, type Placing, placeInAreas } from '#practice/grid-areas'
import { placeOf } from '#practice/grid-mark'
import type { GridRefusal } from '#practice/grid-refusal'
import { queuesOf, takeTurn } from '#practice/take-turns'
import { seatRoles } from '#practice/turn'
import { isPresentThroughout, type JoinedPresence } from '#squad/joined-presence'
import type { PlayerId } from '#squad/player'

/** Everything about one column that its turns are made of. */
export type ColumnSetting = {
  readonly index: number
  readonly column: GridColumn
  readonly turns: readonly Interval[]
  readonly marked: readonly Marked[]
  readonly presence: JoinedPresence
}

/** Who has a place in each turn of a column. */
export type Seatings = readonly (readonly Placing[])[]

/** Everyone marked plays in every turn it is there for. */
export function seatAllThrough({
  index,
  column,
  turns,
  marked,
  presence,
}: ColumnSetting): Result<Seatings, GridRefusal> {
  const placings = placeInAreas(marked, areasOf(column, marked))
  if (!placings.ok) return refuse(...placings.reasons.map((reason) => ({ ...reason, column: index })))
  return accept(
    turns.map((turn) =>
      placings.value.filter(({ playerId }) => isPresentThroughout(presence, playerId, turn)),
    ),
  )
}

/** Everyone marked takes turns, so many at a time; `lastPlayed` holds the number of the last turn each player had. */
export function seatTakingTurns(
  { index, column, turns, marked, presence }: ColumnSetting,
  {
    shapes,
    lastPlayed,
  }: { readonly shapes: readonly AreaShape[]; readonly lastPlayed: ReadonlyMap<PlayerId, number> },
): Result<Seatings, GridRefusal> {
  const places = marked.flatMap(({ playerId, mark }) => {
    const place = placeOf(mark)
    return place ? [{ playerId, ...place }] : []
  })
  const halfWritten = seatRoles.filter((role) => {
    const own = places.filter((place) => place.role === role)
    return own.some((place) => place.area === null) && own.some((place) => place.area !== null)
  })
  if (halfWritten.length > 0) {
    return refuse(
      ...halfWritten.map((role) => ({ reason: 'someAreasMissing' as const, role, column: index })),
    )
  }
  const areas = areasOf(column, marked)
  let queues = queuesOf(places, lastPlayed)
  return accept(
    turns.map((turn) => {
      const present = new Set(
        places.map((place) => place.playerId).filter((id) => isPresentThroughout(presence, id, turn)),
      )
      const taken = takeTurn(queues, { areas, shapes, present })
      queues = taken.queues
      return taken.seated
    }),
  )
}
