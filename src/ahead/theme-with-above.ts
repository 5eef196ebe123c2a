import type { AheadTheme } from '#ahead/problem'
import { withAbove } from '#themes/theme-tree'

/** A theme and all it stands under, as places in the list, nearest first. */
export function themeWithAbove(
  themes: readonly Pick<AheadTheme, 'parent'>[],
  theme: number,
): readonly number[] {
  return withAbove(theme, (at) => themes[at]?.parent ?? null)
}
