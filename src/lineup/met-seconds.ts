import type { Seconds } from '#common/time'
import type { FieldLine } from '#match/format/line-wish'
import { fieldLines } from '#match/format/line-wish'
import type { Spell } from '#match/match'
import type { PlayerId } from '#squad/player'

/** Time in each line out of goal. */
export type MetSeconds = Readonly<Record<FieldLine, Seconds>>

export const nothingMet: MetSeconds = { back: 0, middle: 0, forward: 0 }

/** Time in each line over some matches, by player. */
export function metSecondsOf(spells: readonly Spell[]): ReadonlyMap<PlayerId, MetSeconds> {
  const met = new Map<PlayerId, MetSeconds>()
  for (const { playerId, line, start, end } of spells) {
    const own = met.get(playerId) ?? nothingMet
    const field = fieldLines.find((one) => one === line)
    if (field) met.set(playerId, { ...own, [field]: own[field] + end - start })
  }
  return met
}
