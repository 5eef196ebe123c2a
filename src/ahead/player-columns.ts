import type { AheadPlayer } from '#ahead/problem'
import { rotationColumns } from '#rotation/problem'

/** The gaps of every player, or its tolerances: column after column, player after player. */
export function playerColumns(
  players: readonly Pick<AheadPlayer, 'gap' | 'tolerance'>[],
  what: 'gap' | 'tolerance',
): Float64Array {
  return Float64Array.from(players.flatMap((own) => rotationColumns.map((column) => own[what][column])))
}
