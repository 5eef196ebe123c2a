/**
 * The Flesch-Kincaid grade of a text: the school year in which it is understood; age is about five more.
 * Kincaid, Fishburne, Rogers and Chissom 1975, Research Branch Report 8-75, Naval Technical Training Command.
 */
export function readingGrade(text: string): number {
  const sentences = text.split(/[.!?:;]+(?=\s|$)/).filter((part) => /\p{L}/u.test(part)).length
  const words = text.match(/[\p{L}\p{N}][\p{L}\p{N}’']*/gu) ?? []
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0)
  return 0.39 * (words.length / sentences) + 11.8 * (syllables / words.length) - 15.59
}

/** Groups of vowels, without an e at the end that is not heard: a rule of thumb for English, no dictionary. */
export function syllablesIn(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-z]/g, '')
  if (letters.length <= 3) return 1
  const heard = letters
    .replace(/(?<![aeioutd])ed$|(?<![aeioul])e$|(?<![aeiouchsxz])es$/, '')
    .replace(/^y/, '')
  return Math.max(1, (heard.match(/[aeiouy]+/g) ?? []).length)
}
