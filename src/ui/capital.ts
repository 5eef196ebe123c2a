/** The same word with a capital, for the beginning of a sentence. */
export function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1)
}
