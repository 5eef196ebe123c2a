import { lineFrom } from '#common/line-from'
import type { Theme, ThemeId } from '#themes/theme'

/** A theme and everything it stands under, nearest first: a turn of a theme is a turn of all of these. */
export function themeAndAbove(themes: readonly Theme[], themeId: ThemeId): readonly ThemeId[] {
  const parentOf = new Map(themes.map((theme) => [theme.id, theme.parentId]))
  return lineFrom(themeId, (id) => parentOf.get(id) ?? null)
}
