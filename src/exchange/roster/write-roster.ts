import type { Day } from '#common/time'
import { writeCsv } from '#exchange/csv/write-csv'

/** A membership with its player, as a roster shows it. */
export type RosterLine = {
  readonly name: string
  readonly code: string | null
  readonly keeps: boolean
  readonly wantsToKeep: boolean
  readonly firstDay: Day
  readonly lastDay: Day | null
}

const header = ['Player', 'Code', 'May keep goal', 'Wants to keep goal', 'Member from', 'Member to']

/** The roster as CSV, days as 2026-12-31. `readRoster` understands it without guessing. */
export function writeRoster(lines: readonly RosterLine[]): string {
  const yesNo = (answer: boolean) => (answer ? 'yes' : 'no')
  const rows = lines.map((l) => [l.name, l.code, yesNo(l.keeps), yesNo(l.wantsToKeep), l.firstDay, l.lastDay])
  return writeCsv([header, ...rows])
}

/** Whether a header is the one written here: then a comma in a name is part of the name. */
export function isOwnRoster(cells: readonly string[]): boolean {
  return cells.length === header.length && header.every((word, at) => cells[at] === word)
}
