import { isColumnInside } from '#ahead/chance/is-inside'
import type { AheadPlayer } from '#ahead/problem'
import { type ColumnSeconds, type RotationColumn, rotationColumns } from '#rotation/problem'

/** Roles and situations in which a gap would raise a flag: the same that the chances of a plan are reckoned for. */
export function columnsOutside(
  { tolerance }: Pick<AheadPlayer, 'tolerance'>,
  gap: ColumnSeconds,
): readonly RotationColumn[] {
  return rotationColumns.filter(
    (column) => !isColumnInside(column, { gap: gap[column], tolerance: tolerance[column] }),
  )
}

/** How many players are inside the tolerance in every role and situation. `gaps` in the order of the players. */
export function countInside(
  players: readonly Pick<AheadPlayer, 'tolerance'>[],
  gaps: readonly ColumnSeconds[],
): number {
  return players.filter((player, index) => {
    const gap = gaps[index]
    return gap !== undefined && columnsOutside(player, gap).length === 0
  }).length
}
