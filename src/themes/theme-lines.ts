import type { Theme, ThemeId } from '#themes/theme'
import { themeAndAbove } from '#themes/theme-tree'

/** A theme with the steps it stands under others. */
export type ThemeLine<Of extends Theme = Theme> = { readonly theme: Of; readonly depth: number }

/** The programme from top to bottom: every theme followed by those under it, each level in its own order. */
export function themeLines<Of extends Theme>(themes: readonly Of[]): readonly ThemeLine<Of>[] {
  const known = new Set(themes.map(({ id }) => id))
  const under = (parentId: ThemeId | null, depth: number): readonly ThemeLine<Of>[] =>
    themes
      // What stands under a theme that is not in the list stands at the top.
      .filter((theme) => (theme.parentId && known.has(theme.parentId) ? theme.parentId : null) === parentId)
      .sort((a, b) => a.order - b.order || a.name.localeCompare(b.name, 'en') || (a.id < b.id ? -1 : 1))
      .flatMap((theme) => [{ theme, depth }, ...under(theme.id, depth + 1)])
  return under(null, 0)
}

/** A theme and every theme under it: whoever looks at a theme looks at all of these. */
export function themeAndBelow(themes: readonly Theme[], themeId: ThemeId): ReadonlySet<ThemeId> {
  return new Set(themes.filter(({ id }) => themeAndAbove(themes, id).includes(themeId)).map(({ id }) => id))
}
