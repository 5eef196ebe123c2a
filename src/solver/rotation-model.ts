import { type KeeperChain, keeperChains, staysUntil } from '#rotation/keeper-chains'
import { type MayTake, mayTakeIn } from '#rotation/may-take'
import { resting, seatPlace, stationOf } from '#rotation/place'
import { presentAt, type RotationProblem, type SeatRole, seatRoles } from '#rotation/problem'
import { LinearModel } from '#solver/linear-model'
import type { TurnGroup } from '#solver/turn-groups'

/** A column that counts the turns of a group in which a player has one of some places of one role. */
export type ShareColumn = {
  readonly column: number
  readonly group: number
  readonly player: number
  readonly role: SeatRole
  readonly places: readonly number[]
}

/** A column that is 1 when a player keeps through these turns of a chain of keepers who stay. */
export type DutyColumn = {
  readonly column: number
  readonly player: number
  readonly place: number
  readonly turns: readonly number[]
}

/** Every rotation of a problem as a solution of a linear model; which solutions are rotations depends on the groups. */
export type RotationModel = {
  readonly problem: RotationProblem
  readonly groups: readonly TurnGroup[]
  readonly linear: LinearModel
  readonly shares: readonly ShareColumn[]
  readonly duties: readonly DutyColumn[]
}

/**
 * Seats, keepers, sides, fixed places and keepers who stay, without rests and without a goal. With groups of single
 * turns also pairs apart, place by place; with larger ones only where a turn has one station.
 */
export function rotationModel(problem: RotationProblem, groups: readonly TurnGroup[]): RotationModel {
  const linear = new LinearModel()
  const mayTake = mayTakeIn(problem)
  const chains = keeperChains(problem)
  const model = {
    problem,
    groups,
    linear,
    shares: groups.flatMap((_, group) => shareColumns({ problem, groups, linear, mayTake, chains }, group)),
    duties: chains.flatMap((chain) => dutyColumns({ problem, linear, mayTake }, chain)),
  }
  groups.forEach((_, group) => {
    addSeatRows(model, chains, group)
    addOnePlaceRows(model, mayTake, group)
    addApartRows(model, group)
  })
  return model
}

type Making = {
  readonly problem: RotationProblem
  readonly groups: readonly TurnGroup[]
  readonly linear: LinearModel
  readonly mayTake: MayTake
  readonly chains: readonly KeeperChain[]
}

/** Seat places of a group's turns with their seats, those of keepers who stay left out. */
function openPlaces(problem: RotationProblem, chains: readonly KeeperChain[], turn: number) {
  return (problem.turns[turn]?.stations ?? []).flatMap((seats, station) =>
    seatRoles.flatMap((role) => {
      const place = seatPlace(station, role)
      const isChained = chains.some((chain) => chain.place === place && chain.turns.includes(turn))
      return seats[role] > 0 && !isChained ? [{ place, role, seats: seats[role] }] : []
    }),
  )
}

function shareColumns(making: Making, group: number): readonly ShareColumn[] {
  const { problem, groups, linear, mayTake, chains } = making
  const turns = groups[group]?.turns ?? []
  const turn = turns[0] ?? 0
  const places = openPlaces(problem, chains, turn)
  const isSingle = groups.every((own) => own.turns.length === 1)
  const isApart = new Set(isSingle ? problem.apart.flat() : [])
  return presentAt(problem, turn).flatMap((player) =>
    seatRoles.flatMap((role) => {
      const own = places.filter((open) => open.role === role && mayTake(turn, player, open.place))
      const sets = isApart.has(player) ? own.map(({ place }) => [place]) : [own.map(({ place }) => place)]
      return sets
        .filter((set) => set.length > 0)
        .map((set) => {
          const column = linear.addColumn({ upper: turns.length, isWhole: true })
          return { column, group, player, role, places: set }
        })
    }),
  )
}

function dutyColumns(
  making: Pick<Making, 'problem' | 'linear' | 'mayTake'>,
  chain: KeeperChain,
): readonly DutyColumn[] {
  const { problem, linear, mayTake } = making
  const duties: DutyColumn[] = []
  const into = chain.turns.map((): [number, number][] => [])
  chain.turns.forEach((_, from) => {
    const row = into[from] ?? []
    for (const player of problem.players.keys()) {
      const until = staysUntil(problem, chain, { player, from })
      const turns = chain.turns.slice(from, until)
      // Nobody takes over but where somebody may have gone.
      if (turns.length === 0 || (from > 0 && row.length === 0)) continue
      if (!turns.every((turn) => mayTake(turn, player, chain.place))) continue
      const column = linear.addColumn({ upper: 1, isWhole: true })
      duties.push({ column, player, place: chain.place, turns })
      into[until]?.push([column, 1])
      row.push([column, -1])
    }
    const started = from === 0 ? -1 : 0
    linear.addRow({ lower: started, upper: started }, row)
  })
  return duties
}

function addSeatRows(model: RotationModel, chains: readonly KeeperChain[], group: number): void {
  const turns = model.groups[group]?.turns ?? []
  const places = openPlaces(model.problem, chains, turns[0] ?? 0)
  const own = model.shares.filter((share) => share.group === group)
  for (const role of seatRoles) {
    const seats = places.filter((open) => open.role === role).reduce((sum, open) => sum + open.seats, 0)
    const all = seats * turns.length
    model.linear.addRow({ lower: all, upper: all }, entriesOf(own.filter((share) => share.role === role)))
  }
  const isByPlace = own.some(
    (share) => share.places.length < places.filter(({ role }) => role === share.role).length,
  )
  if (!isByPlace) return
  for (const { place, seats } of places) {
    const alone = own.filter((share) => share.places.length === 1 && share.places[0] === place)
    model.linear.addRow({ upper: seats * turns.length }, entriesOf(alone))
  }
}

function entriesOf(columns: readonly { readonly column: number }[]): [number, number][] {
  return columns.map(({ column }) => [column, 1])
}

/** What makes the number of turns of a group in which a player does not rest. */
export function activeEntries(model: RotationModel, player: number, group: number): [number, number][] {
  const turns = model.groups[group]?.turns ?? []
  const entries = entriesOf(model.shares.filter((own) => own.group === group && own.player === player))
  for (const duty of model.duties) {
    if (duty.player !== player) continue
    const kept = duty.turns.filter((turn) => turns.includes(turn)).length
    if (kept > 0) entries.push([duty.column, kept])
  }
  return entries
}

function addOnePlaceRows(model: RotationModel, mayTake: MayTake, group: number): void {
  const turns = model.groups[group]?.turns ?? []
  const turn = turns[0] ?? 0
  for (const player of presentAt(model.problem, turn)) {
    const isSeated = !mayTake(turn, player, resting)
    const bounds = { upper: turns.length, ...(isSeated ? { lower: turns.length } : {}) }
    model.linear.addRow(bounds, activeEntries(model, player, group))
  }
}

function addApartRows(model: RotationModel, group: number): void {
  const turns = model.groups[group]?.turns ?? []
  const stations = model.problem.turns[turns[0] ?? 0]?.stations ?? []
  for (const pair of model.problem.apart) {
    stations.forEach((_, station) => {
      const isHere = (place: number) => place !== resting && stationOf(place) === station
      const shares = model.shares.filter(
        (own) => own.group === group && pair.includes(own.player) && own.places.every(isHere),
      )
      const duties = model.duties.flatMap((own): [number, number][] => {
        const kept = own.turns.filter((turn) => turns.includes(turn)).length
        return pair.includes(own.player) && isHere(own.place) && kept > 0 ? [[own.column, kept]] : []
      })
      if (shares.length + duties.length === 0) return
      model.linear.addRow({ upper: turns.length }, [...entriesOf(shares), ...duties])
    })
  }
}

/** The columns that whole numbers belong to, as a plan fills them. */
export function columnsOfPlan(
  model: RotationModel,
  plan: readonly (readonly number[])[],
): Map<number, number> {
  const values = new Map<number, number>()
  for (const { column, group, player, places } of model.shares) {
    const turns = model.groups[group]?.turns ?? []
    values.set(column, turns.filter((turn) => places.includes(plan[turn]?.[player] ?? resting)).length)
  }
  for (const duty of model.duties) {
    const isKept = duty.turns.every((turn) => plan[turn]?.[duty.player] === duty.place)
    values.set(duty.column, isKept && startsHere(model, plan, duty) ? 1 : 0)
  }
  return values
}

/** Whether the plan's duty begins with this column's first turn, not before. */
function startsHere(model: RotationModel, plan: readonly (readonly number[])[], duty: DutyColumn): boolean {
  const [first = 0] = duty.turns
  const round = model.problem.turns[first]?.round
  for (let turn = first - 1; turn >= 0 && model.problem.turns[turn]?.round === round; turn -= 1) {
    const station = model.problem.turns[turn]?.stations[stationOf(duty.place)]
    if (station && station.keep > 0) return plan[turn]?.[duty.player] !== duty.place
  }
  return true
}
