import type { Option } from '#ui/page/select'

type Line = { readonly id: string; readonly name: string; readonly depth: number }

/** Themes to choose from, each set in by what it stands under. */
export function themeOptions(lines: readonly Line[]): readonly Option[] {
  return lines.map(({ id, name, depth }) => ({ value: id, label: `${'– '.repeat(depth)}${name}` }))
}
