import type { Line } from '#match/match'

/** What is typed into a cell of a match: keeper, back, middle, forward, off. Empty is off too, once anyone plays. */
export type LineMark = '' | 'K' | 'B' | 'M' | 'F' | 'O'

const lineOfMark: Readonly<Record<LineMark, Line | null>> = {
  '': null,
  O: null,
  K: 'keeper',
  B: 'back',
  M: 'middle',
  F: 'forward',
}

const markOfLine = { keeper: 'K', back: 'B', middle: 'M', forward: 'F' } as const satisfies Record<
  Line,
  LineMark
>

const nextByTap: Readonly<Record<LineMark, LineMark>> = { '': 'K', K: 'B', B: 'M', M: 'F', F: 'O', O: '' }

/** The line a mark gives; null for who is off. */
export function lineOf(mark: LineMark): Line | null {
  return lineOfMark[mark]
}

export function lineMarkOf(line: Line): LineMark {
  return markOfLine[line]
}

/** Understands a cell in any case; null when it is no mark. */
export function parseLineMark(text: string): LineMark | null {
  const bare = text.trim().toUpperCase()
  return Object.hasOwn(lineOfMark, bare) ? (bare as LineMark) : null
}

/** The mark after one more tap: keeper, back, middle, forward, off, empty. */
export function nextLineMark(mark: LineMark): LineMark {
  return nextByTap[mark]
}
