import type { AheadTheme } from '#ahead/problem'
import { lineFrom } from '#common/line-from'

/** A theme and all it stands under, as places in the list, nearest first. */
export function themeWithAbove(
  themes: readonly Pick<AheadTheme, 'parent'>[],
  theme: number,
): readonly number[] {
  return lineFrom(theme, (at) => themes[at]?.parent ?? null)
}
