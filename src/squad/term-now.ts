import type { Day } from '#common/time'
import type { Term } from '#squad/squad'

/** The term that runs, else the last that has begun, else the first to come. `terms` in order of time. */
export function termNow(terms: readonly Term[], today: Day): Term | null {
  return terms.filter(({ firstDay }) => firstDay <= today).at(-1) ?? terms[0] ?? null
}
