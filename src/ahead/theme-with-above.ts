import type { AheadTheme } from '#ahead/problem'

/** A theme and all it stands under, as places in the list, nearest first. */
export function themeWithAbove(
  themes: readonly Pick<AheadTheme, 'parent'>[],
  theme: number,
): readonly number[] {
  const line: number[] = []
  for (let at: number | null = theme; at !== null && !line.includes(at); at = themes[at]?.parent ?? null)
    line.push(at)
  return line
}
