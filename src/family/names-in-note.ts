import { foldName } from '#family/fold-name'

type Names = {
  /** The child the note is about. */
  readonly ownName: string
  /** Everybody else of the squad. */
  readonly otherNames: readonly string[]
}

/**
 * Which other children a note names, by first name, each once, in the order given. Accents and capitals make no
 * difference, and only whole words count. Who shares the child's own first name is named only by the whole name.
 */
export function namesInNote(note: string, { ownName, otherNames }: Names): readonly string[] {
  const text = foldName(note)
  const own = foldName(firstNameOf(ownName))
  const named = otherNames
    .filter((name) => {
      const first = foldName(firstNameOf(name))
      return stands(text, first === own ? foldName(name) : first)
    })
    .map((name) => (foldName(firstNameOf(name)) === own ? name.trim() : firstNameOf(name)))
  return [...new Set(named)]
}

function firstNameOf(name: string): string {
  return name.trim().split(/\s+/)[0] ?? ''
}

// Writings that put no space between words: there a name is found anywhere.
const unspaced =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Khmer}\p{Script=Lao}]/u

function stands(text: string, name: string): boolean {
  if (name === '') return false
  return unspaced.test(name) ? text.includes(name) : ` ${text} `.includes(` ${name} `)
}
