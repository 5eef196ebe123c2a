import { type Generated, type GenerationLimits, generateColumns } from '#solver/generate-columns'
import { enterPart, type Generation, type Part } from '#solver/generation'
import type { Timetable } from '#solver/timetable-rows'

/** Timetables taken this much are kept all at once. */
const surely = 0.8
/** Rounds of pricing after each step. */
const roundsEach = 6

/**
 * Makes whole timetables of the fractional ones: keeps the one that the master takes most, lets the others come after
 * it with new timetables, and so on to the last player. Returns the timetables, which need not fill all seats; null when
 * time ran out. The master is as before afterwards, but for what it has learnt.
 */
export function dive(
  generation: Generation,
  from: Generated,
  limits: GenerationLimits,
): readonly Timetable[] | null {
  const { rows } = generation
  const before = generation.part
  const kept = new Map<number, Timetable>()
  let at = from
  try {
    while (kept.size < rows.networks.length) {
      if (at.values.length === 0 || !limits.mayGoOn()) return null
      const step = mostTaken(generation, at.values, kept)
      if (step.length === 0) return null
      for (const timetable of step) kept.set(timetable.player, timetable)
      enterPart(generation, { ...before, closed: closedBut(generation, before.closed, kept) })
      if (kept.size === rows.networks.length) break
      at = generateColumns(generation, { ...limits, mostWidth: 60, mostRounds: roundsEach })
    }
    return [...kept.values()]
  } finally {
    enterPart(generation, before)
  }
}

function mostTaken(
  { timetables }: Generation,
  values: Float64Array,
  kept: ReadonlyMap<number, Timetable>,
): readonly Timetable[] {
  let most = -1
  const sure: Timetable[] = []
  timetables.forEach((timetable, index) => {
    const value = values[index] ?? 0
    if (kept.has(timetable.player) || value <= 1e-7) return
    if (value >= surely) sure.push(timetable)
    if (most < 0 || value > (values[most] ?? 0)) most = index
  })
  const one = timetables[most]
  return sure.length > 0 ? sure : one ? [one] : []
}

function closedBut(
  { rows }: Generation,
  before: Part['closed'],
  kept: ReadonlyMap<number, Timetable>,
): readonly (readonly Uint8Array[])[] {
  return rows.networks.map(({ player, arcs }) => {
    const own = kept.get(player)
    return arcs.map((all, turn) =>
      Uint8Array.from(all, (_, arc) =>
        own ? (own.arcs[turn] === arc ? 0 : 1) : (before?.[player]?.[turn]?.[arc] ?? 0),
      ),
    )
  })
}
