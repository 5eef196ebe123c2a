import type { RotationColumn } from '#rotation/problem'
import { words } from '#ui/words'

/** What a role or a situation is called above its bars. */
export function columnName(column: RotationColumn): string {
  return column === 'outnumbering' || column === 'level' || column === 'outnumbered'
    ? words.situation[column]
    : words.role[column]
}
