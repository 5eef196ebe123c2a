import { type DeedName, deedWords, type LookedPage, lookWords } from '#access/deed-words'

/** What was done, with the names that its ids stand for; null where there is none any more. */
export type DeedToSay = {
  readonly action: string
  /** Of a look: the page. */
  readonly page: string | null
  /** Who did it; null: nobody who was signed in. */
  readonly by: string | null
  readonly isByCode: boolean
  readonly thing: string | null
  readonly child: string | null
  readonly squad: string | null
}

/** A deed as one sentence: "Idris Fallow added the player Ada Fenn." */
export function sayDeed(deed: DeedToSay): string {
  const said = wordsOf(deed).replace(
    /\{(thing|child|squad)\}/g,
    (_, one: keyof typeof unnamed) => deed[one] ?? unnamed[one],
  )
  return `${whoOf(deed)} ${said}.`
}

const unnamed = { thing: 'something that is no longer there', child: 'a child', squad: 'a squad' } as const

function wordsOf({ action, page }: DeedToSay): string {
  if (action === 'look' && page !== null && Object.hasOwn(lookWords, page))
    return lookWords[page as LookedPage]
  // A book that was put back may come from a later version.
  return Object.hasOwn(deedWords, action) ? deedWords[action as DeedName] : `did “${action}”`
}

function whoOf({ by, isByCode }: DeedToSay): string {
  if (isByCode) return 'A helper with a code'
  return by ?? 'The book by itself'
}
