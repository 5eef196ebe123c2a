import { noise } from '#fairness/noise'
import type { RotationColumn } from '#rotation/problem'

/**
 * On which side of a column a difference at the end of a term raises a flag: too little attacking, defending and of each
 * situation, too much goal and waiting. Much attacking is nobody's complaint, and shows as another's too little; who is
 * short of goal because it wants to keep is not known here.
 */
export const judgedSide: Readonly<Record<RotationColumn, 'short' | 'over'>> = {
  attack: 'short',
  defend: 'short',
  keep: 'over',
  rest: 'over',
  outnumbering: 'short',
  level: 'short',
  outnumbered: 'short',
}

/** Whether a difference is inside the tolerance, as the flags see it; on its edge is inside. */
export function isColumnInside(
  column: RotationColumn,
  { gap, tolerance }: { readonly gap: number; readonly tolerance: number },
): boolean {
  return secondsBeyond(column, { gap, tolerance }) <= noise
}

/** How far a difference is beyond the tolerance on the side that raises a flag; 0 inside. */
export function secondsBeyond(
  column: RotationColumn,
  { gap, tolerance }: { readonly gap: number; readonly tolerance: number },
): number {
  return Math.max(0, (judgedSide[column] === 'short' ? -gap : gap) - tolerance)
}

/** Whether what is short of a theme's wished share of the own playing time is inside its tolerance. */
export function isThemeInside({
  due,
  seconds,
  tolerance,
}: {
  readonly due: number
  readonly seconds: number
  readonly tolerance: number
}): boolean {
  return due - seconds <= tolerance + noise
}
