import 'server-only'
import { ZxcvbnFactory } from '@zxcvbn-ts/core'
import * as common from '@zxcvbn-ts/language-common'

/** Of a password that is all there is (NIST SP 800-63B-4, 3.1.1.2). No rule says what it is made of. */
export const fewestLetters = 15
/** Longer ones only cost the server time. */
export const mostLetters = 256
/** Tries with which a guesser who knows the usual words and patterns is through; 1 in 10^10 is past any list. */
const fewestGuessesLog10 = 10

const separators = /[\s@.,_-]+/g

let guesser: ZxcvbnFactory | null = null

function guesserOfPasswords(): ZxcvbnFactory {
  guesser ??= new ZxcvbnFactory({
    dictionary: common.dictionary,
    graphs: common.adjacencyGraphs,
    useLevenshteinDistance: false,
  })
  return guesser
}

/** A password as it is compared and hashed: one form for the same letters, whichever keyboard typed them (NFC). */
export function asKept(password: string): string {
  return password.normalize('NFC')
}

/**
 * Why a password will not do; null when it will. `known` are words that anybody would try: name, address, club.
 */
export function passwordFault(password: string, known: readonly string[]): string | null {
  const letters = [...asKept(password)].length
  if (letters < fewestLetters)
    return `A password has ${fewestLetters} letters or more; this one has ${letters}. Four or five words that do not belong together are easy to keep in mind.`
  if (letters > mostLetters) return `A password has ${mostLetters} letters at most; this one has ${letters}.`
  const words = known
    .flatMap((text) => [text, text.replaceAll(separators, ''), ...text.split(separators)])
    .filter((word) => [...word].length > 2)
  const { guessesLog10 } = guesserOfPasswords().check(asKept(password), words)
  return guessesLog10 < fewestGuessesLog10
    ? 'This password is among the first that a guesser would try: a common one, a pattern, or made of your own name or address. Take words that nobody would put together.'
    : null
}
