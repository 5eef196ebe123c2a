/** What can be wrong with a register; `line` and `other` are places in it, from 0. */
export type RegisterFault =
  | { readonly rule: 'lineWithoutLength'; readonly line: number }
  | { readonly rule: 'linesOverlap'; readonly line: number; readonly other: number }
