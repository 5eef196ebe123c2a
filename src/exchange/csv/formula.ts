// A spreadsheet takes a cell that begins with one of these for a formula. OWASP ASVS 5.0, 1.2.10, and the fullwidth
// forms that some spreadsheets fold to the plain ones.
const formulaStart = /^'*[=+\-@\t\r\n\0＝＋－＠]/

/**
 * A text that no spreadsheet runs as a formula: an apostrophe stands before one that begins like one. Texts that
 * already have apostrophes there get one more, so that `fromSafeCell` always gives back what went in.
 */
export function toSafeCell(text: string): string {
  return formulaStart.test(text) ? `'${text}` : text
}

/** Takes off the apostrophe of `toSafeCell`; every other text (also `'t Hooft`) is left alone. */
export function fromSafeCell(cell: string): string {
  return cell.startsWith("'") && formulaStart.test(cell) ? cell.slice(1) : cell
}
