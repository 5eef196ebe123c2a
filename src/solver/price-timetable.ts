import type { RotationProblem } from '#rotation/problem'
import { beginLayer, type LabelPool, labelAt, moveLabel } from '#solver/label-pool'
import { onDuty, type PlayerNetwork } from '#solver/player-network'

/** What the timetables of a player are to be searched for. Costs are in units of time, squared. */
export type PricingWish = {
  /** By turn and arc of the network; infinite where the arc may not be used. */
  readonly arcCosts: readonly Float64Array[]
  /** Totals around which the bound on what is still to come is sharpest: attack, defend, keep, rest. */
  readonly near: readonly number[]
  /** What each total must be at least and at most; null: anything. */
  readonly ranges: readonly { readonly least: number; readonly most: number }[] | null
  /** Timetables that cost as much as this are of no interest. */
  readonly below: number
  /** Most labels that are kept in a turn; with fewer the answer is quicker and its bound lower. */
  readonly width: number
  /** Most timetables wanted. */
  readonly wanted: number
  /** Asked now and then; false ends the search with nothing found. */
  readonly mayGoOn: () => boolean
}

export type PricedTimetable = {
  readonly cost: number
  /** The arc of each turn. */
  readonly arcs: readonly number[]
  /** In units: attack, defend, keep, rest. */
  readonly totals: readonly number[]
}

export type PricingAnswer = {
  readonly found: readonly PricedTimetable[]
  /** No timetable costs less than this, nor than `below`. */
  readonly bound: number
  /** Labels made: the work that it took. */
  readonly labels: number
}

export type Pricer = {
  readonly search: (wish: PricingWish) => PricingAnswer
  /** For each turn and arc, no timetable with that arc costs less than this. */
  readonly arcBounds: (wish: Pick<PricingWish, 'arcCosts' | 'near'>) => readonly Float64Array[]
}

type FlatArcs = {
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
/** Labels taken along their arcs between two looks at the clock. */
const labelBatch = 8192

/**
 * Searches the timetables of one player for those that cost least, where a timetable costs what its arcs cost and, over
 * the four roles, (total − owed)². Labels carry the totals so far, so that the squares are exact; what cannot become
 * cheap enough is dropped by a bound in which keeping is exact and the other roles cost as little as their tangents
 * (dynamic programming with completion bounds, common practice in column generation).
 */
export function pricerOf(problem: RotationProblem, network: PlayerNetwork, measure: Measure): Pricer {
  const own = dataOf(problem, network, measure)
  return {
    search: (wish) => searchTimetables(own, wish),
    arcBounds: (wish) => boundArcs(own, wish),
  }
}

type PricerData = ReturnType<typeof dataOf>

function dataOf(problem: RotationProblem, network: PlayerNetwork, { unitSeconds, owed, pool }: Measure) {
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

function isKeeping(kind: number): boolean {
  return kind === 2 || kind === onDuty
}

/**
 * What attack, defence and rest cost beyond what keeping alone decides. With `off` = live − keep − what is owed of the
 * three, their squares are off² ÷ 3 and those of what each is away from an equal part of it; only the latter are
 * replaced by tangents, at `apart`, which add up to nothing.
 */
type Tangents = { readonly slope: Float64Array; readonly apart: Float64Array; readonly constant: number }

function tangentsOf(own: PricerData, near: readonly number[]): Tangents {
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
function complete(own: PricerData, arcCosts: readonly Float64Array[], { slope, constant }: Tangents): void {
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

function keepAfter({ keeps, keepIndex }: PricerData, keep: number, length: number): number {
  const total = (keeps[keep] as number) + length
  return total < keepIndex.length ? (keepIndex[total] as number) : -1
}

function offOf({ live, owed }: PricerData, keep: number): number {
  return live - keep - (owed[0] as number) - (owed[1] as number) - (owed[3] as number)
}

/** At least this much a square is above its tangent at `near` when its total ends between these. */
function aboveTangent(near: number, least: number, most: number): number {
  const away = near < least ? least - near : near > most ? near - most : 0
  return away * away
}

function searchTimetables(own: PricerData, wish: PricingWish): PricingAnswer {
  const { arcCosts, near, below } = wish
  const tangents = tangentsOf(own, near)
  complete(own, arcCosts, tangents)
  const least = (own.completion[0] as Float64Array)[0] as number
  if (least >= below) return { found: [], bound: least, labels: 0 }
  const { pool } = own
  pool.count = 0
  beginLayer(pool)
  const root = labelAt(pool, 0, 0, 0, 0)
  pool.cost[root] = 0
  pool.before[root] = -1
  let dropped = never
  let past = 0
  let first = 0
  for (let turn = 0; turn < own.turns; turn += 1) {
    const last = pool.count
    past += own.lived[turn] as number
    beginLayer(pool)
    const outside = extend(own, wish, { turn, first, last, past, tangents })
    if (outside === null) return { found: [], bound: least, labels: pool.count }
    dropped = Math.min(dropped, outside)
    dropped = Math.min(dropped, narrow(pool, last, wish.width))
    first = last
  }
  const found = readEnds(own, first, wish)
  const best = found[0]?.cost ?? never
  return { found, bound: Math.max(least, Math.min(dropped, best)), labels: pool.count }
}

type Extending = {
  readonly turn: number
  readonly first: number
  readonly last: number
  readonly past: number
  readonly tangents: Tangents
}

/** Takes every label of a turn along every arc; returns the least bound that was dropped, null when time was up. */
function extend(own: PricerData, wish: PricingWish, at: Extending): number | null {
  const { pool, keeps } = own
  const { arcCosts, below, ranges } = wish
  const { turn, first, last, past, tangents } = at
  const { kind, to, starts } = own.layers[turn] as FlatArcs
  const costs = arcCosts[turn] as Float64Array
  const after = own.completion[turn + 1] as Float64Array
  const length = own.seconds[turn] as number
  const still = own.still[turn + 1] as number
  const size = keeps.length
  const { slope, apart } = tangents
  const [perAttack, perDefend, perRest] = [slope[0] as number, slope[1] as number, slope[3] as number]
  // Where each tangent touches, as a total, if the player kept for nothing at all: less by a third of what it keeps.
  const third = offOf(own, 0) / 3
  const touchAttack = (apart[0] as number) + (own.owed[0] as number) + third
  const touchDefend = (apart[1] as number) + (own.owed[1] as number) + third
  const touchRest = (apart[3] as number) + (own.owed[3] as number) + third
  const mostKeep = keeps.at(-1) as number
  let dropped = never
  for (let label = first; label < last; label += 1) {
    if ((label - first) % labelBatch === labelBatch - 1 && !wish.mayGoOn()) return null
    const node = pool.node[label] as number
    const soFar = pool.cost[label] as number
    for (let arc = starts[node] as number; arc < (starts[node + 1] as number); arc += 1) {
      const cost = soFar + (costs[arc] as number)
      const what = kind[arc] as number
      const attack = (pool.attack[label] as number) + (what === 0 ? length : 0)
      const defend = (pool.defend[label] as number) + (what === 1 ? length : 0)
      const kept = pool.keep[label] as number
      const keep = isKeeping(what) ? keepAfter(own, kept, length) : kept
      const keptNow = keeps[keep] as number
      const rest = past - attack - defend - keptNow
      const fromKeep = keptNow / 3
      const range = still + (Math.min(mostKeep, keptNow + still) - keptNow) / 3
      const next = to[arc] as number
      const bound =
        cost +
        perAttack * attack +
        perDefend * defend +
        perRest * rest +
        (after[next * size + keep] as number) +
        aboveTangent(touchAttack, attack + fromKeep, attack + fromKeep + range) +
        aboveTangent(touchDefend, defend + fromKeep, defend + fromKeep + range) +
        aboveTangent(touchRest, rest + fromKeep, rest + fromKeep + range)
      if (ranges !== null && !canEnd(ranges, attack, defend, keptNow, rest, still)) continue
      if (!(bound < below)) {
        if (bound < dropped) dropped = bound
        continue
      }
      const into = labelAt(pool, next, attack, defend, keep)
      if (cost >= (pool.cost[into] as number)) continue
      pool.cost[into] = cost
      pool.bound[into] = bound
      pool.before[into] = label
      pool.arc[into] = arc
    }
  }
  return dropped
}

/** Whether the totals so far can still end in their ranges. */
function canEnd(
  ranges: NonNullable<PricingWish['ranges']>,
  attack: number,
  defend: number,
  keep: number,
  rest: number,
  still: number,
): boolean {
  for (let role = 0; role < 4; role += 1) {
    const total = role === 0 ? attack : role === 1 ? defend : role === 2 ? keep : rest
    const range = ranges[role]
    if (range && (total > range.most || total + still < range.least)) return false
  }
  return true
}

/** Keeps the labels of the last turn with the least bounds, `width` of them; returns the least bound dropped. */
function narrow(pool: LabelPool, first: number, width: number): number {
  if (pool.count - first <= width) return never
  const limit = smallestBut(pool.bound.slice(first, pool.count), width)
  let kept = first
  for (let label = first; label < pool.count; label += 1) {
    if ((pool.bound[label] as number) >= limit) continue
    if (label !== kept) moveLabel(pool, label, kept)
    kept += 1
  }
  pool.count = kept
  return limit
}

/** The value that has `index` smaller ones before it in order; the values are left in another order. */
function smallestBut(values: Float64Array, index: number): number {
  let [low, high] = [0, values.length - 1]
  while (low < high) {
    const pivot = values[(low + high) >> 1] as number
    let [left, right] = [low, high]
    while (left <= right) {
      while ((values[left] as number) < pivot) left += 1
      while ((values[right] as number) > pivot) right -= 1
      if (left > right) break
      const kept = values[left] as number
      values[left] = values[right] as number
      values[right] = kept
      left += 1
      right -= 1
    }
    if (index <= right) high = right
    else if (index >= left) low = left
    else break
  }
  return values[index] as number
}

function readEnds(own: PricerData, first: number, wish: PricingWish): readonly PricedTimetable[] {
  const { pool, live, owed, keeps } = own
  const ends: { readonly label: number; readonly cost: number; readonly totals: readonly number[] }[] = []
  for (let label = first; label < pool.count; label += 1) {
    const [attack, defend] = [pool.attack[label] as number, pool.defend[label] as number]
    const keep = keeps[pool.keep[label] as number] as number
    const totals = [attack, defend, keep, live - attack - defend - keep]
    const squares = totals.reduce((sum, total, role) => sum + (total - (owed[role] as number)) ** 2, 0)
    const cost = (pool.cost[label] as number) + squares
    if (cost < wish.below) ends.push({ label, cost, totals })
  }
  ends.sort((a, b) => a.cost - b.cost)
  return ends.slice(0, wish.wanted).map(({ label, cost, totals }) => {
    const arcs: number[] = []
    for (let at = label; (pool.before[at] as number) >= 0; at = pool.before[at] as number)
      arcs.push(pool.arc[at] as number)
    return { cost, totals, arcs: arcs.reverse() }
  })
}

function boundArcs(own: PricerData, wish: Pick<PricingWish, 'arcCosts' | 'near'>): readonly Float64Array[] {
  const tangents = tangentsOf(own, wish.near)
  complete(own, wish.arcCosts, tangents)
  const { seconds, keeps, completion, layers, nodes } = own
  const size = keeps.length
  let before = new Float64Array((nodes[0] ?? 1) * size).fill(never)
  before[0] = 0
  return layers.map(({ count, from, to, kind }, turn) => {
    const after = completion[turn + 1] as Float64Array
    const costs = wish.arcCosts[turn] as Float64Array
    const length = seconds[turn] as number
    const next = new Float64Array((nodes[turn + 1] ?? 0) * size).fill(never)
    const bounds = new Float64Array(count).fill(never)
    for (let arc = 0; arc < count; arc += 1) {
      const what = kind[arc] as number
      const cost = (costs[arc] as number) + (tangents.slope[what] as number) * length
      for (let keep = 0; keep < size; keep += 1) {
        const soFar = (before[(from[arc] as number) * size + keep] as number) + cost
        const later = isKeeping(what) ? keepAfter(own, keep, length) : keep
        if (later < 0 || soFar === never) continue
        const at = (to[arc] as number) * size + later
        if (soFar < (next[at] as number)) next[at] = soFar
        bounds[arc] = Math.min(bounds[arc] as number, soFar + (after[at] as number))
      }
    }
    before = next
    return bounds
  })
}
