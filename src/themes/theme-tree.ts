import type { Theme, ThemeId } from '#themes/theme'

/** A theme and everything it stands under, nearest first: a turn of a theme is a turn of all of these. */
export function themeAndAbove(themes: readonly Theme[], themeId: ThemeId): readonly ThemeId[] {
  const parentOf = new Map(themes.map((theme) => [theme.id, theme.parentId]))
  return withAbove(themeId, (id) => parentOf.get(id) ?? null)
}

/** The same of themes by whatever they are known by. One that stands under itself ends the line. */
export function withAbove<Key>(theme: Key, parentOf: (theme: Key) => Key | null): readonly Key[] {
  const line: Key[] = []
  for (let at: Key | null = theme; at !== null && !line.includes(at); at = parentOf(at)) line.push(at)
  return line
}
