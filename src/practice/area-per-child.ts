import type { DesignRound } from '#practice/design'
import type { DesignSheet } from '#practice/design-sheet'
import { placesOfAll } from '#practice/round-places'

/** Square metres for each child who is playing. */
export type AreaPerChild = {
  readonly all: number
  /** The same space shared by those in the field only; null when every place is in goal. */
  readonly withoutKeepers: number | null
}

type Pitch = Pick<DesignSheet, 'areaLengthM' | 'areaWidthM'>

/** Null: the round has no places. */
export function areaPerChild(pitch: Pitch, round: Pick<DesignRound, 'stations'>): AreaPerChild | null {
  const { all, keep } = placesOfAll(round.stations)
  if (all === 0) return null
  const area = pitch.areaLengthM * pitch.areaWidthM
  return { all: area / all, withoutKeepers: all > keep ? area / (all - keep) : null }
}

/** Over all rounds with places, the least and the most; null: there is none. */
export function areaPerChildOver(
  pitch: Pitch,
  rounds: readonly DesignRound[],
): { readonly least: number; readonly most: number } | null {
  const each = rounds.flatMap((round) => areaPerChild(pitch, round)?.all ?? [])
  return each.length > 0 ? { least: Math.min(...each), most: Math.max(...each) } : null
}
