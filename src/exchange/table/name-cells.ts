import type { NameOrder } from '#exchange/table/file-settings'
import { tidyName, turnAroundName } from '#exchange/table/name-form'
import { cellOf } from '#exchange/table/row-reading'

type NameField = 'name' | 'firstName' | 'lastName'

/** Most characters the book keeps. */
export const longestName = 80
export const longestCode = 200
export const longestTitle = 120

/** The name in a row, from one column or from two. */
export function nameInRow<Field extends string>(
  row: { readonly cells: readonly string[] },
  columns: readonly (Field | NameField | null)[],
  order: NameOrder,
): string {
  const whole = cellOf<Field | NameField>(row, columns, 'name')
  const name = order === 'lastFirst' ? turnAroundName(whole) : whole
  const parts = [
    cellOf<Field | NameField>(row, columns, 'firstName'),
    cellOf<Field | NameField>(row, columns, 'lastName'),
  ]
  // A column called Name beside one called First name holds the last name.
  if (columns.includes('firstName') && !columns.includes('lastName')) return tidyName(`${parts[0]} ${name}`)
  return tidyName(name || parts.join(' '))
}

/** `lastFirst` when at least half of the names have one comma with a text on both sides. */
export function guessNameOrder(names: readonly string[]): NameOrder {
  const written = names.filter((name) => name !== '')
  const turned = written.filter((name) => turnAroundName(name) !== name)
  return turned.length > 0 && turned.length * 2 >= written.length ? 'lastFirst' : 'asWritten'
}

/** What is wrong with a name, or null. */
export function nameProblem(name: string): string | null {
  const length = [...name].length
  if (length > longestName)
    return `The name has ${length} characters; at most ${longestName} can be kept. Shorten it.`
  return /[\p{L}\p{N}\p{S}]/u.test(name)
    ? null
    : `“${name}” has no letter in it; write the player's name there.`
}

/** Longer than the book keeps; in characters, as the database counts, so that a file and a form are asked the same. */
export function isTitleTooLong(title: string): boolean {
  return [...title].length > longestTitle
}

/** What is wrong with a code, or null. */
export function codeProblem(code: string): string | null {
  const length = [...code].length
  return length > longestCode
    ? `The code has ${length} characters; at most ${longestCode} can be kept. Shorten it.`
    : null
}
