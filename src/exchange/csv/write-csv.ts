import { toSafeCell } from '#exchange/csv/formula'

/** Numbers are written as they are; null and undefined as nothing. Texts are made safe for spreadsheets. */
export type Cell = string | number | null | undefined

const byteOrderMark = '\uFEFF'

/**
 * A table as RFC 4180 has it: commas, CRLF after every record, fields quoted where they must be, quotes doubled.
 * It begins with a byte order mark, without which spreadsheets read UTF-8 as something older. A number of ours keeps
 * its minus sign: it is no formula, and sums must go on working.
 */
export function writeCsv(rows: readonly (readonly Cell[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(writeCell).join(',')}\r\n`).join('')
}

function writeCell(cell: Cell): string {
  if (cell === null || cell === undefined) return ''
  if (typeof cell === 'number') return String(cell)
  const text = toSafeCell(cell)
  // Semicolons and tabs are quoted too: a spreadsheet set to split at them would otherwise begin a new cell there.
  return /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}
