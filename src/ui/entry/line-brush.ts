import { type LineMark, nextLineMark } from '#match/line-mark'

export type LineBrush = 'next' | 'K' | 'B' | 'M' | 'F' | 'O'

/** In the order in which they are offered. */
export const lineBrushChoices: Readonly<Record<LineBrush, { readonly text: string; readonly word: string }>> =
  {
    next: { text: '↻', word: 'a tap goes through K, B, M, F, O' },
    K: { text: 'K', word: 'keeper' },
    B: { text: 'B', word: 'back' },
    M: { text: 'M', word: 'middle' },
    F: { text: 'F', word: 'forward' },
    O: { text: 'O', word: 'off' },
  }

/** The mark that a tap with a brush leaves; a second tap with the same letter empties the cell. */
export function lineAfterTap(mark: LineMark, brush: LineBrush): LineMark {
  if (brush === 'next') return nextLineMark(mark)
  return mark === brush ? '' : brush
}
