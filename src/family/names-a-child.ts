import { foldName } from '#family/fold-name'
import { standsIn } from '#family/stands-in'

/** A later word of a name that is shorter is more often a word of the language: "de", "al". */
const leastLetters = 3

/**
 * Whether a text names one of the children: by the whole name, or by any part of it. Meant to say yes rather too often
 * than too seldom. Accents and capitals make no difference, and only whole words count.
 */
export function namesAChild(
  text: string,
  { names, by }: { readonly names: readonly string[]; readonly by: 'anyPart' | 'wholeName' },
): boolean {
  const folded = foldName(text)
  if (folded === '') return false
  return names.map(foldName).some((name) => {
    if (standsIn(folded, name)) return true
    return by === 'anyPart' && partsOf(name).some((part) => standsIn(folded, part))
  })
}

function partsOf(name: string): readonly string[] {
  const [first = '', ...later] = name.split(' ')
  return [first, ...later.filter((word) => word.length >= leastLetters)].filter((word) => word.length > 1)
}
