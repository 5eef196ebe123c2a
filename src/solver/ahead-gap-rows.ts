import { judgedSide } from '#ahead/chance/is-inside'
import { seatColumns, seatMeaning } from '#ahead/seat-column'
import { secondsInMinute } from '#common/time'
import { type RotationColumn, rotationColumns } from '#rotation/problem'
import { type AheadFrame, bentCost, type Entry, entry, scaled } from '#solver/ahead-frame'
import type { LeanColumns } from '#solver/ahead-lean-rows'

/** By player and figure the column that says how far it is beyond its tolerance on the side that raises a flag. */
export type OutsideColumns = readonly Readonly<Record<RotationColumn, number>>[]

/** What is left of everyone's gaps, and what it costs. */
export function addGaps({ linear, problem }: AheadFrame, leans: LeanColumns): OutsideColumns {
  return problem.players.map(({ gap, tolerance }, player) => {
    const outside = {} as Record<RotationColumn, number>
    for (const figure of rotationColumns) {
      const so = gap[figure] / secondsInMinute
      const most = tolerance[figure] / secondsInMinute
      const [over, under] = [bentCost(linear, most), bentCost(linear, most)]
      // so + moved = over − under
      linear.addRow({ lower: -so, upper: -so }, [
        ...movedBy(leans, player, figure),
        ...scaled(over, -1),
        ...under,
      ])
      const [, [beyond]] = judgedSide[figure] === 'over' ? over : under
      outside[figure] = beyond
    }
    return outside
  })
}

/** What a player's leans add to a figure of its: who sits more waits less. */
function movedBy(leans: LeanColumns, player: number, figure: RotationColumn): readonly Entry[] {
  return leans.flatMap((bin) =>
    seatColumns.flatMap((column, index) => {
      const { role, situation } = seatMeaning[column]
      const by = figure === 'rest' ? -1 : role === figure || situation === figure ? 1 : 0
      return entry(bin[player]?.[index], by)
    }),
  )
}
