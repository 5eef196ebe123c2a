import type { RotationProblem } from '#rotation/problem'
import type { LabelPool } from '#solver/label-pool'
import { onDuty, type PlayerNetwork } from '#solver/player-network'

export type FlatArcs = {
  readonly count: number
  readonly from: Int32Array
  readonly to: Int32Array
  readonly kind: Int8Array
  /** By node, where its arcs begin: arcs are in the order of the nodes they leave. */
  readonly starts: Int32Array
}

export type Measure = {
  readonly unitSeconds: number
  readonly owed: readonly number[]
  /** Shared by all players of a problem, one search at a time. */
  readonly pool: LabelPool
}

const never = Number.POSITIVE_INFINITY

export type PricerData = ReturnType<typeof dataOf>

/** A network as flat arrays, with what the search for its timetables needs again and again. */
export function dataOf(
  problem: RotationProblem,
  network: PlayerNetwork,
  { unitSeconds, owed, pool }: Measure,
) {
  const present = problem.players[network.player]?.present ?? []
  const turns = problem.turns.length
  const seconds = Float64Array.from(problem.turns.map((turn) => turn.seconds / unitSeconds))
  const lived = Float64Array.from(seconds, (length, turn) => (present[turn] ? length : 0))
  const still = new Float64Array(turns + 1)
  for (let turn = turns - 1; turn >= 0; turn -= 1)
    still[turn] = (still[turn + 1] as number) + (lived[turn] as number)
  const live = still[0] as number
  const keeps = keepTotals(network, seconds)
  const keepIndex = new Int32Array(Math.max(live, keeps.at(-1) ?? 0) + 1).fill(-1)
  keeps.forEach((total, index) => {
    keepIndex[total] = index
  })
  const layers = network.arcs.map((arcs, turn): FlatArcs => {
    const starts = new Int32Array((network.nodes[turn] ?? 0) + 1)
    for (const { from } of arcs) starts[from + 1] = (starts[from + 1] as number) + 1
    for (let node = 1; node < starts.length; node += 1)
      starts[node] = (starts[node] as number) + (starts[node - 1] as number)
    return {
      count: arcs.length,
      from: Int32Array.from(arcs, (arc) => arc.from),
      to: Int32Array.from(arcs, (arc) => arc.to),
      kind: Int8Array.from(arcs, (arc) => arc.kind),
      starts,
    }
  })
  return {
    turns,
    seconds,
    lived,
    still,
    live,
    keeps: Float64Array.from(keeps),
    keepIndex,
    layers,
    nodes: network.nodes,
    owed,
    completion: network.nodes.map((count) => new Float64Array(count * keeps.length)),
    pool,
  }
}

/** Every total of keeping that the player can have at some time. */
function keepTotals(network: PlayerNetwork, seconds: Float64Array): readonly number[] {
  const all = new Set<number>([0])
  let now = Array.from({ length: network.nodes[0] ?? 1 }, () => new Set([0]))
  network.arcs.forEach((arcs, turn) => {
    const next = Array.from({ length: network.nodes[turn + 1] ?? 0 }, () => new Set<number>())
    for (const { from, to, kind } of arcs) {
      const more = isKeeping(kind) ? (seconds[turn] as number) : 0
      for (const total of now[from] ?? []) {
        next[to]?.add(total + more)
        all.add(total + more)
      }
    }
    now = next
  })
  return [...all].sort((a, b) => a - b)
}

export function isKeeping(kind: number): boolean {
  return kind === 2 || kind === onDuty
}

/**
 * What attack, defence and rest cost beyond what keeping alone decides. With `off` = live − keep − what is owed of the
 * three, their squares are off² ÷ 3 and those of what each is away from an equal part of it; only the latter are
 * replaced by tangents, at `apart`, which add up to nothing.
 */
export type Tangents = {
  readonly slope: Float64Array
  readonly apart: Float64Array
  readonly constant: number
}

export function tangentsOf(own: PricerData, near: readonly number[]): Tangents {
  const slope = new Float64Array(6)
  const apart = new Float64Array(4)
  let constant = 0
  const off =
    freeRoles.reduce((sum, role) => sum + (near[role] as number) - (own.owed[role] as number), 0) / 3
  for (const role of freeRoles) {
    const away = (near[role] as number) - (own.owed[role] as number) - off
    apart[role] = away
    slope[role] = 2 * away
    constant -= 2 * away * (own.owed[role] as number) + away ** 2
  }
  return { slope, apart, constant }
}

/** Attack, defence and rest: what is not keeping. */
const freeRoles = [0, 1, 3]

/** From the end: what each node and total of keeping costs at least from there on, squares included. */
export function complete(
  own: PricerData,
  arcCosts: readonly Float64Array[],
  { slope, constant }: Tangents,
): void {
  const { turns, seconds, keeps, completion, layers, nodes, owed } = own
  const size = keeps.length
  const end = completion[turns] as Float64Array
  for (let node = 0; node < (nodes[turns] ?? 0); node += 1)
    for (let keep = 0; keep < size; keep += 1)
      end[node * size + keep] =
        ((keeps[keep] as number) - (owed[2] as number)) ** 2 +
        offOf(own, keeps[keep] as number) ** 2 / 3 +
        constant
  for (let turn = turns - 1; turn >= 0; turn -= 1) {
    const into = (completion[turn] as Float64Array).fill(never)
    const after = completion[turn + 1] as Float64Array
    const { count, from, to, kind } = layers[turn] as FlatArcs
    const costs = arcCosts[turn] as Float64Array
    const length = seconds[turn] as number
    for (let arc = 0; arc < count; arc += 1) {
      const what = kind[arc] as number
      const cost = (costs[arc] as number) + (slope[what] as number) * length
      if (cost === never) continue
      const [start, next] = [(from[arc] as number) * size, (to[arc] as number) * size]
      const isKept = isKeeping(what)
      for (let keep = 0; keep < size; keep += 1) {
        const later = isKept ? keepAfter(own, keep, length) : keep
        if (later < 0) continue
        const value = cost + (after[next + later] as number)
        if (value < (into[start + keep] as number)) into[start + keep] = value
      }
    }
  }
}

export function keepAfter({ keeps, keepIndex }: PricerData, keep: number, length: number): number {
  const total = (keeps[keep] as number) + length
  return total < keepIndex.length ? (keepIndex[total] as number) : -1
}

export function offOf({ live, owed }: PricerData, keep: number): number {
  return live - keep - (owed[0] as number) - (owed[1] as number) - (owed[3] as number)
}
