import type { RotationProblem } from '#rotation/problem'
import { boundArcs } from '#solver/bound-arcs'
import { beginLayer, type LabelPool, labelAt, moveLabel } from '#solver/label-pool'
import type { PlayerNetwork } from '#solver/player-network'
import {
  complete,
  dataOf,
  type FlatArcs,
  isKeeping,
  keepAfter,
  type Measure,
  offOf,
  type PricerData,
  type Tangents,
  tangentsOf,
} from '#solver/pricer-data'

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
