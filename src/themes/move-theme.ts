import type { Theme, ThemeId } from '#themes/theme'
import { themeLines } from '#themes/theme-lines'

/** A theme's new place among its siblings. */
export type Placed = { readonly id: ThemeId; readonly order: number }

/** The themes under a parent (null: at the top), in their order. */
export function themesUnder<Of extends Theme>(
  themes: readonly Of[],
  parentId: ThemeId | null,
): readonly Of[] {
  return themeLines(themes)
    .map(({ theme }) => theme)
    .filter((theme) => theme.parentId === parentId)
}

/** The place after the last one under a parent. */
export function orderAfterLast(themes: readonly Theme[], parentId: ThemeId | null): number {
  return Math.max(0, ...themesUnder(themes, parentId).map(({ order }) => order)) + 1
}

/**
 * Moves a theme one step up or down among its siblings: the places that change, counted from 1. Empty at the end of the
 * row, and for a theme that is not there.
 */
export function moveTheme(
  themes: readonly Theme[],
  { themeId, step }: { readonly themeId: ThemeId; readonly step: 'up' | 'down' },
): readonly Placed[] {
  const own = themes.find(({ id }) => id === themeId)
  if (!own) return []
  const siblings = [...themesUnder(themes, own.parentId)]
  const from = siblings.indexOf(own)
  const to = step === 'up' ? from - 1 : from + 1
  const other = siblings[to]
  if (!other) return []
  siblings[from] = other
  siblings[to] = own
  return siblings.flatMap(({ id, order }, index) => (order === index + 1 ? [] : [{ id, order: index + 1 }]))
}
