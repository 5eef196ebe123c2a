import { type Line, lines } from '#match/match'
import { capital } from '#ui/capital'
import { words } from '#ui/words'

/** "Goal", "Back", "Middle", "Forward": headings over who is on. */
export function lineHeading(line: Line): string {
  return line === 'keeper' ? 'In goal' : capital(words.line[line])
}

/** Where somebody comes on: "in goal", "back". */
export function lineWord(line: Line): string {
  return line === 'keeper' ? 'in goal' : words.line[line]
}

/** In order from goal to goal. */
export function byLine<Placed extends { readonly line: Line }>(
  placed: readonly Placed[],
): readonly { readonly line: Line; readonly placed: readonly Placed[] }[] {
  return lines.flatMap((line) => {
    const own = placed.filter((one) => one.line === line)
    return own.length > 0 ? [{ line, placed: own }] : []
  })
}
