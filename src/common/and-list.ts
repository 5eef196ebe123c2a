/** "Ann", "Ann and Bo", "Ann, Bo and Cy". */
export function andList(names: readonly string[]): string {
  return new Intl.ListFormat('en-GB', { type: 'conjunction' }).format(names)
}
