// Writings that put no space between words: there a name is found anywhere.
const unspaced =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Khmer}\p{Script=Lao}]/u

/** Whether a name, or a word of it, stands in a text as words of their own; both as `foldName` makes them. */
export function standsIn(text: string, name: string): boolean {
  if (name === '') return false
  return unspaced.test(name) ? text.includes(name) : ` ${text} `.includes(` ${name} `)
}
