import type { Seconds } from '#common/time'
import type { LineUpProblem, LineUpWindow } from '#lineup/problem'
import { inGoal, keyOfState, offField, onField, type RowState, rowSteps } from '#solver/row-state'

/** What a player does in some windows one after another. Nodes are numbered through the whole network. */
export type RowArc = {
  readonly from: number
  readonly to: number
  readonly first: number
  /** By window, from the first on: off, on the field or in goal. */
  readonly places: readonly number[]
  readonly changes: number
  readonly comings: number
  readonly seconds: Seconds
  readonly goal: Seconds
}

/** Ways through a match, from node 0 to the ends. An end tells the time on and in goal only where the network tells time. */
export type RowNetwork = {
  readonly nodeCount: number
  readonly arcs: readonly RowArc[]
  readonly ends: readonly { readonly node: number; readonly seconds: Seconds; readonly goal: Seconds }[]
}

export type RowWish = {
  readonly tellsTime: boolean
  readonly play: ReadonlySet<Seconds>
  /** Null: time in goal is not told. */
  readonly keep: ReadonlySet<Seconds> | null
  readonly mayStart: (isOn: boolean) => boolean
  /** With more it is not worth finishing. */
  readonly mostArcs: number
}

/** Patterns of so many windows at most are listed whole, with time told and without. */
const mostPatterns = { told: 30, untold: 250 }

/**
 * Every way through the match that a player's own rules allow: a path is a pattern of places, a pattern is a path. Null
 * where that takes more arcs than are wished for.
 */
export function rowNetwork(problem: LineUpProblem, player: number, wish: RowWish): RowNetwork | null {
  const steps = rowSteps(problem, player)
  const own = problem.players[player]
  let layer = new Map<string, { node: number; state: RowState }>([['', { node: 0, state: steps.first }]])
  let nodeCount = 1
  const arcs: RowArc[] = []
  const ahead = playableAfter(problem, player)
  const least = Math.min(...wish.play)
  const most = { play: Math.max(...wish.play), keep: Math.max(...(wish.keep ?? [Number.POSITIVE_INFINITY])) }
  const isBeyond = ({ seconds, goal }: RowState, next: number) =>
    seconds > most.play || goal > most.keep || seconds + (ahead[next] ?? 0) < least
  for (const { first, last, endsPeriod } of chunksOf(problem, own?.keeps ?? false, wish.tellsTime)) {
    const next = new Map<string, { node: number; state: RowState }>()
    const go = (from: number, before: RowState, at: Walk) => {
      const window = first + at.places.length
      if (window > last) {
        const key = keyOfState(before, { endsPeriod, tellsTime: wish.tellsTime })
        let to = next.get(key)
        if (!to) {
          to = { node: nodeCount, state: wish.tellsTime ? before : { ...before, seconds: 0, goal: 0 } }
          nodeCount += 1
          next.set(key, to)
        }
        arcs.push({
          from,
          to: to.node,
          first,
          ...at,
          seconds: before.seconds - at.seconds,
          goal: before.goal - at.goal,
        })
        return
      }
      for (const place of [offField, onField, inGoal]) {
        if (window === 0 && !wish.mayStart(place !== offField)) continue
        const step = steps.step(before, window, place)
        if (!step || (wish.tellsTime && isBeyond(step.state, window + 1))) continue
        go(from, wish.keep ? step.state : { ...step.state, goal: 0 }, {
          ...at,
          places: [...at.places, place],
          changes: at.changes + step.changes,
          comings: at.comings + step.comings,
        })
      }
    }
    for (const { node, state } of layer.values()) {
      if (arcs.length > wish.mostArcs) return null
      go(node, state, { places: [], changes: 0, comings: 0, seconds: state.seconds, goal: state.goal })
    }
    layer = next
  }
  const ends = [...layer.values()].filter(
    ({ state }) => !wish.tellsTime || (wish.play.has(state.seconds) && (wish.keep?.has(state.goal) ?? true)),
  )
  return pruned({
    nodeCount,
    arcs,
    ends: ends.map(({ node, state }) => ({ node, seconds: state.seconds, goal: state.goal })),
  })
}

/** By window: the most that can be played from it on. */
function playableAfter({ windows, players }: LineUpProblem, player: number): readonly Seconds[] {
  const ahead = windows.map(() => 0)
  let sum = 0
  for (let window = windows.length - 1; window >= 0; window -= 1) {
    const { start, end } = windows[window] as LineUpWindow
    if (players[player]?.isThere[window]) sum += end - start
    ahead[window] = sum
  }
  return ahead
}

type Walk = Pick<RowArc, 'places' | 'changes' | 'comings' | 'seconds' | 'goal'>

/** Leaves out what leads to no end. */
function pruned({ nodeCount, arcs, ends }: RowNetwork): RowNetwork {
  const leads = new Uint8Array(nodeCount)
  for (const { node } of ends) leads[node] = 1
  for (let index = arcs.length - 1; index >= 0; index -= 1) {
    const arc = arcs[index] as RowArc
    if (leads[arc.to]) leads[arc.from] = 1
  }
  return { nodeCount, ends, arcs: arcs.filter(({ to }) => leads[to]) }
}

type Chunk = { readonly first: number; readonly last: number; readonly endsPeriod: boolean }

/** Periods, or parts of them where a period has too many patterns to be listed. */
function chunksOf(problem: LineUpProblem, keeps: boolean, tellsTime: boolean): readonly Chunk[] {
  const ways = keeps && !problem.rules.keeperForPeriod ? 3 : 2
  const most = Math.max(
    1,
    Math.floor(Math.log(tellsTime ? mostPatterns.told : mostPatterns.untold) / Math.log(ways)),
  )
  const chunks: Chunk[] = []
  const { windows } = problem
  for (let first = 0; first < windows.length; ) {
    let end = first
    while (end < windows.length && windows[end]?.period === windows[first]?.period) end += 1
    const size = Math.ceil((end - first) / Math.ceil((end - first) / most))
    for (; first < end; first += size) {
      const last = Math.min(first + size, end) - 1
      chunks.push({ first, last, endsPeriod: last === end - 1 })
      if (last === end - 1) break
    }
    first = end
  }
  return chunks
}
