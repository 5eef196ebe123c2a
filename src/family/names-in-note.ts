import { foldName } from '#family/fold-name'
import { standsIn } from '#family/stands-in'

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
      return standsIn(text, first === own ? foldName(name) : first)
    })
    .map((name) => (foldName(firstNameOf(name)) === own ? name.trim() : firstNameOf(name)))
  return [...new Set(named)]
}

function firstNameOf(name: string): string {
  return name.trim().split(/\s+/)[0] ?? ''
}
