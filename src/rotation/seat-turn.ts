import { cheapestMatching } from '#rotation/cheapest-matching'
import type { MayTake } from '#rotation/may-take'
import { away, resting, roleOf, seatPlace, stationOf } from '#rotation/place'
import { allSeatsOfTurn, presentAt, type RotationProblem, seatRoles } from '#rotation/problem'

const forbidden = 1e13

export type TurnWish = {
  readonly turn: number
  /** Keepers already decided: player → place. They take no other place, and nobody else takes theirs. */
  readonly keepers?: ReadonlyMap<number, number>
  /** What it costs to give a player a place; 0 where none is given. */
  readonly cost?: (player: number, place: number) => number
}

/**
 * The cheapest seating of one turn that keeps every rule of that turn, or null when there is none. Exact: where two who
 * are kept apart come together, both ways out are tried (one of them not at that station), the cheaper wins.
 */
export function seatTurn(
  problem: RotationProblem,
  mayTake: MayTake,
  wish: TurnWish,
): readonly number[] | null {
  const turn = problem.turns[wish.turn]
  const present = presentAt(problem, wish.turn)
  if (!turn || allSeatsOfTurn(turn) > present.length) return null
  const slots = turn.stations.flatMap((seats, station) =>
    seatRoles.flatMap((role) => Array.from({ length: seats[role] }, () => seatPlace(station, role))),
  )
  while (slots.length < present.length) slots.push(resting)
  const costs = slotCosts({ present, slots, mayTake, wish })
  const best = separate({ problem, present, slots, costs })
  if (best === null) return null
  const places = problem.players.map(() => away)
  present.forEach((player, row) => {
    places[player] = slots[best.columns[row] as number] ?? away
  })
  return places
}

type Seating = {
  readonly present: readonly number[]
  readonly slots: readonly number[]
  readonly costs: Float64Array
}

function slotCosts(asked: {
  readonly present: readonly number[]
  readonly slots: readonly number[]
  readonly mayTake: MayTake
  readonly wish: TurnWish
}): Float64Array {
  const { present, slots, mayTake, wish } = asked
  const taken = new Set(wish.keepers?.values())
  const costs = new Float64Array(present.length * slots.length)
  present.forEach((player, row) => {
    const own = wish.keepers?.get(player)
    slots.forEach((place, column) => {
      const isOpen = own === undefined ? !(taken.has(place) && roleOf(place) === 'keep') : own === place
      const may = isOpen && mayTake(wish.turn, player, place)
      costs[row * slots.length + column] = may ? (wish.cost?.(player, place) ?? 0) : forbidden
    })
  })
  return costs
}

function separate(
  asked: Seating & { readonly problem: RotationProblem },
  limit = forbidden / 2,
): { readonly columns: Int32Array; readonly total: number } | null {
  const { present, slots, costs, problem } = asked
  const columns = cheapestMatching(present.length, costs)
  const total = columns.reduce((sum, column, row) => sum + (costs[row * slots.length + column] as number), 0)
  if (total >= limit) return null
  const rowOf = new Map(present.map((player, row) => [player, row]))
  const stationAt = (row: number) => {
    const place = slots[columns[row] as number] as number
    return place === resting ? -1 : stationOf(place)
  }
  for (const pair of problem.apart) {
    const rows = pair.map((player) => rowOf.get(player))
    const [one, other] = rows
    if (one === undefined || other === undefined) continue
    const station = stationAt(one)
    if (station < 0 || station !== stationAt(other)) continue
    const first = separate({ ...asked, costs: costsAwayFrom(asked, one, station) }, limit)
    const second = separate({ ...asked, costs: costsAwayFrom(asked, other, station) }, first?.total ?? limit)
    return second ?? first
  }
  return { columns, total }
}

function costsAwayFrom({ slots, costs }: Seating, row: number, station: number): Float64Array {
  const without = Float64Array.from(costs)
  slots.forEach((place, column) => {
    if (place !== resting && stationOf(place) === station) without[row * slots.length + column] = forbidden
  })
  return without
}
