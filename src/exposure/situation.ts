import type { Situation } from '#exposure/column'

/**
 * The situation of either side at a station, as each side has it. Keepers are not counted.
 * Null for both where one side is missing: there is nobody to outnumber.
 */
export function situationsAt(station: { readonly attackers: number; readonly defenders: number }): {
  readonly attack: Situation | null
  readonly defend: Situation | null
} {
  const { attackers, defenders } = station
  if (attackers === 0 || defenders === 0) return { attack: null, defend: null }
  if (attackers > defenders) return { attack: 'outnumbering', defend: 'outnumbered' }
  if (attackers < defenders) return { attack: 'outnumbered', defend: 'outnumbering' }
  return { attack: 'level', defend: 'level' }
}
