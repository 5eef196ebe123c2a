import type { LineUpPlan } from '#lineup/line-up'
import type { LineUpModel } from '#solver/line-up-model'
import { inGoal, offField, onField } from '#solver/row-state'

/** The patterns of a solution, `[player][window]`: paths are taken off the flow one by one. */
export function patternsOf(
  { classes, problem }: LineUpModel,
  values: Float64Array,
): readonly (readonly number[])[] {
  const patterns: number[][] = problem.players.map(() => [])
  for (const { members, network, firstArc } of classes) {
    const left = network.arcs.map((_, index) => Math.round(values[firstArc + index] ?? 0))
    const out = new Map<number, number[]>()
    for (const [index, { from }] of network.arcs.entries()) {
      if ((left[index] ?? 0) > 0) out.set(from, [...(out.get(from) ?? []), index])
    }
    for (const player of members) {
      let node = 0
      const own: number[] = []
      while (own.length < problem.windows.length) {
        const next = out.get(node)?.find((index) => (left[index] ?? 0) > 0)
        const arc = next === undefined ? undefined : network.arcs[next]
        if (next === undefined || !arc) break
        left[next] = (left[next] ?? 0) - 1
        own.push(...arc.places)
        node = arc.to
      }
      patterns[player] = own
    }
  }
  return patterns
}

/** A known plan as the arcs that it takes, to begin a search with; empty where the model leaves any of them out. */
export function startFrom({ classes }: LineUpModel, plan: LineUpPlan): ReadonlyMap<number, number> {
  const start = new Map<number, number>()
  for (const { members, network, firstArc } of classes) {
    const out = new Map<number, number[]>()
    for (const [index, { from }] of network.arcs.entries()) {
      start.set(firstArc + index, 0)
      const own = out.get(from)
      if (own) own.push(index)
      else out.set(from, [index])
    }
    for (const player of members) {
      const own = (plan[player] ?? []).map((line) =>
        line === null ? offField : line === 'keeper' ? inGoal : onField,
      )
      let node = 0
      for (let window = 0; window < own.length; ) {
        const taken = out
          .get(node)
          ?.find((arc) => network.arcs[arc]?.places.every((place, index) => place === own[window + index]))
        const arc = taken === undefined ? undefined : network.arcs[taken]
        if (taken === undefined || !arc) return new Map()
        start.set(firstArc + taken, (start.get(firstArc + taken) ?? 0) + 1)
        node = arc.to
        window += arc.places.length
      }
    }
  }
  return start
}
