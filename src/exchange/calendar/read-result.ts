import { type Goals, mostGoals } from '#match/goals'

/** What a cell says of how a match ended. `none`: nothing yet. `wrong`: it cannot be read. */
export type ResultReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'goals'; readonly first: number; readonly second: number; readonly word: Word | null }
  | { readonly kind: 'wrong' }

/** Won, drawn or lost, as some lists say beside the numbers. */
type Word = 'won' | 'drawn' | 'lost'

const notYet = /^(?:[-–—:?x]|[-–—]\s?[:-]\s?[-–—]|v|vs|tbc|tbd|tba|n\/?a)?$/i
const form = /^(?:([wdl])\s+)?(\d{1,3})\s*[-–—:]\s*(\d{1,3})(?:\s+([wdl]))?$/i

/** `3-1`, `3:1`, `3 – 1`, with W, D or L before or after. */
export function readResult(text: string): ResultReading {
  const cell = text.trim()
  if (notYet.test(cell)) return { kind: 'none' }
  const found = form.exec(cell)
  const [first, second] = [Number(found?.[2]), Number(found?.[3])]
  if (!found || first > mostGoals || second > mostGoals) return { kind: 'wrong' }
  return { kind: 'goals', first, second, word: wordOf(found[1] ?? found[4]) }
}

function wordOf(letter: string | undefined): Word | null {
  if (letter === undefined) return null
  return ({ w: 'won', d: 'drawn', l: 'lost' } as const)[letter.toLowerCase() as 'w' | 'd' | 'l']
}

/** Whether goals say what the word beside them says. */
export function fitsWord({ ours, theirs }: Goals, word: Word | null): boolean {
  if (word === null) return true
  return word === (ours > theirs ? 'won' : ours < theirs ? 'lost' : 'drawn')
}
