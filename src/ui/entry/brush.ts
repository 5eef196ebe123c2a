import { type Mark, nextMark, passMark } from '#practice/grid-mark'

/** What a tap on a cell does: go through the marks one by one, or set one at once. */
export type Brush = 'next' | 'A' | 'D' | 'K' | 'W' | 'passed' | 'empty'

/** In the order in which they are offered. */
export const brushChoices: Readonly<Record<Brush, { readonly text: string; readonly word: string }>> = {
  next: { text: '↻', word: 'a tap goes through A, D, K, W' },
  A: { text: 'A', word: 'attacking' },
  D: { text: 'D', word: 'defending' },
  K: { text: 'K', word: 'in goal' },
  W: { text: 'W', word: 'waiting' },
  passed: { text: 'p', word: 'was offered, passed' },
  empty: { text: '⌫', word: 'empty the cell' },
}

/** The mark that a tap with a brush leaves in a cell. A second tap with the same letter empties it again. */
export function markAfterTap(mark: Mark, brush: Brush): Mark {
  if (brush === 'next') return nextMark(mark)
  if (brush === 'passed') return passMark(mark)
  if (brush === 'empty') return ''
  return mark === brush ? '' : brush
}
