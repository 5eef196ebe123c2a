import type { MayTake } from '#rotation/may-take'
import { resting, seatPlace } from '#rotation/place'
import { type RotationProblem, type SeatRole, seatRoles } from '#rotation/problem'
import type { DutyTable, KeeperDuty } from '#solver/keeper-duties'

/** What a player does in a turn, stations left open: 0 attack, 1 defend, 2 keep (not as one who stays), 3 rest. */
export const onDuty = 4
export const isAway = 5

/** The ways one player can go through the turns, one arc a turn. Nodes of a layer stand before its turn. */
export type PlayerNetwork = {
  readonly player: number
  /** Nodes by layer, one layer more than there are turns. */
  readonly nodes: readonly number[]
  /** Arcs by turn. */
  readonly arcs: readonly (readonly Arc[])[]
  readonly duties: readonly KeeperDuty[]
}

export type Arc = {
  readonly from: number
  readonly to: number
  /** 0-3 as above, `onDuty`, `isAway`. */
  readonly kind: number
  /** Duties of the network that begin with this arc. */
  readonly starts: readonly number[]
  /** The station's place that is kept on duty; −1 otherwise. */
  readonly place: number
}

/** Which roles are open to all in a turn, keepers who stay left out: seats by attack, defend, keep. */
export function openSeats(problem: RotationProblem, table: DutyTable, turn: number): readonly number[] {
  const chained = new Set(
    table.chains.filter((chain) => chain.turns.includes(turn)).map(({ place }) => place),
  )
  return seatRoles.map((role) =>
    (problem.turns[turn]?.stations ?? []).reduce(
      (sum, seats, station) => (chained.has(seatPlace(station, role)) ? sum : sum + seats[role]),
      0,
    ),
  )
}

/** Every timetable of one player that keeps presence, keepers, sides, fixed places, keepers who stay and the limit. */
export function playerNetwork(
  problem: RotationProblem,
  asked: {
    readonly mayTake: MayTake
    readonly table: DutyTable
    readonly player: number
    readonly restLimit: number | null
  },
): PlayerNetwork {
  const { mayTake, table, player, restLimit } = asked
  const duties = table.duties.filter((duty) => duty.player === player)
  const present = problem.players[player]?.present ?? []
  const arcs: Arc[][] = []
  const nodes: number[] = [1]
  // A node: the duties that go on, and how long the player has rested.
  let layer: { readonly active: readonly number[]; readonly run: number }[] = [{ active: [], run: 0 }]
  for (const turn of problem.turns.keys()) {
    const next: { active: readonly number[]; run: number }[] = []
    const index = new Map<string, number>()
    const own: Arc[] = []
    const nodeOf = (active: readonly number[], run: number) => {
      const going = active.filter((duty) => (duties[duty]?.turns.at(-1) ?? -1) > turn)
      const key = `${going.join()} ${run}`
      const known = index.get(key)
      if (known !== undefined) return known
      index.set(key, next.length)
      next.push({ active: going, run })
      return next.length - 1
    }
    layer.forEach(({ active, run }, from) => {
      const add = (
        kind: number,
        newRun: number,
        now: readonly number[],
        starts: readonly number[],
        place = -1,
      ) => own.push({ from, to: nodeOf(now, newRun), kind, starts, place })
      if (!present[turn]) {
        add(isAway, 0, active, [])
        return
      }
      const held = active.find((duty) => duties[duty]?.turns.includes(turn))
      if (held !== undefined) {
        add(onDuty, 0, active, [], duties[held]?.place)
        return
      }
      for (const role of openRoles(problem, { mayTake, table, player, turn })) add(role, 0, active, [])
      if (mayTake(turn, player, resting) && (restLimit === null || run < restLimit))
        add(3, restLimit === null ? 0 : run + 1, active, [])
      duties.forEach((duty, at) => {
        if (duty.turns[0] !== turn) return
        const clashes = active.some((other) => duties[other]?.turns.some((one) => duty.turns.includes(one)))
        if (!clashes)
          add(
            onDuty,
            0,
            [...active, at].sort((a, b) => a - b),
            [at],
            duty.place,
          )
      })
    })
    arcs.push(own)
    nodes.push(next.length)
    layer = next
  }
  return { player, nodes, arcs, duties }
}

function openRoles(
  problem: RotationProblem,
  at: {
    readonly mayTake: MayTake
    readonly table: DutyTable
    readonly player: number
    readonly turn: number
  },
): readonly number[] {
  const { mayTake, table, player, turn } = at
  const chained = new Set(
    table.chains.filter((chain) => chain.turns.includes(turn)).map(({ place }) => place),
  )
  const isOpen = (role: SeatRole) =>
    (problem.turns[turn]?.stations ?? []).some((seats, station) => {
      const place = seatPlace(station, role)
      return seats[role] > 0 && !chained.has(place) && mayTake(turn, player, place)
    })
  return seatRoles.flatMap((role, index) => (isOpen(role) ? [index] : []))
}
