import type { Chance } from '#common/chance'
import type { Generated } from '#solver/generate-columns'
import type { Generation } from '#solver/generation'
import type { Timetable, TimetableRows } from '#solver/timetable-rows'

const hair = 1e-7

/** By turn: who keeps where among the keepers who stay. */
export type Keepers = readonly ReadonlyMap<number, number>[]

/**
 * One timetable for each player, drawn by how much the master takes of each (without chance: the one it takes most).
 * Together they rarely fill the seats; planOfTimetables makes the nearest plan of them. Null where the master has none
 * for some player.
 */
export function drawTimetables(
  { rows, timetables }: Generation,
  { values }: Generated,
  chance: Chance | null,
): readonly Timetable[] | null {
  const own: { readonly timetable: Timetable; readonly value: number }[][] = rows.networks.map(() => [])
  timetables.forEach((timetable, index) => {
    const value = values[index] ?? 0
    if (value > hair) own[timetable.player]?.push({ timetable, value })
  })
  const drawn: Timetable[] = []
  for (const options of own) {
    options.sort((a, b) => b.value - a.value)
    let left = chance === null ? 0 : chance() * options.reduce((sum, { value }) => sum + value, 0)
    const chosen = options.find(({ value }) => {
      left -= value
      return left <= 0
    })
    const one = chosen ?? options[0]
    if (!one) return null
    drawn.push(one.timetable)
  }
  return drawn
}

/**
 * Keepers for every chain: those whose timetable says so first, then those who keep most in the master, one after the
 * other where a keeper goes. Null where nobody is free for a duty.
 */
export function keepersOf(
  generation: Generation,
  drawn: readonly Timetable[],
  { values }: Generated,
): Keepers | null {
  const { rows } = generation
  const shares = dutyShares(generation, values)
  const wanted = new Set(drawn.flatMap((timetable) => dutiesOf(rows, timetable)))
  const keepers = rows.problem.turns.map(() => new Map<number, number>())
  for (const [chain, { turns }] of rows.table.chains.entries()) {
    for (let step = 0; step < turns.length; ) {
      let best = -1
      rows.table.duties.forEach((duty, index) => {
        if (duty.chain !== chain || duty.from !== step) return
        if (duty.turns.some((turn) => keepers[turn]?.has(duty.player))) return
        if (best < 0 || weight(index) > weight(best)) best = index
      })
      const duty = rows.table.duties[best]
      if (!duty) return null
      for (const turn of duty.turns) keepers[turn]?.set(duty.player, duty.place)
      step = duty.until
    }
  }
  return keepers

  function weight(duty: number): number {
    return (wanted.has(duty) ? 2 : 0) + (shares[duty] ?? 0)
  }
}

/** The duties that a timetable begins, as in the table of all. */
function dutiesOf({ networks, table }: TimetableRows, { player, arcs }: Timetable): readonly number[] {
  const network = networks[player]
  return arcs.flatMap((arc, turn) =>
    (network?.arcs[turn]?.[arc]?.starts ?? []).map((start) => {
      const duty = network?.duties[start]
      return duty ? table.duties.indexOf(duty) : -1
    }),
  )
}

function dutyShares({ rows, timetables }: Generation, values: Float64Array): readonly number[] {
  const shares = rows.table.duties.map(() => 0)
  timetables.forEach((timetable, index) => {
    const value = values[index] ?? 0
    if (value <= hair) return
    for (const duty of dutiesOf(rows, timetable)) shares[duty] = (shares[duty] ?? 0) + value
  })
  return shares
}
