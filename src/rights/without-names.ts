const instead = '[another child]'

type Names = { readonly own: string; readonly others: readonly string[] }

/**
 * Takes the names of other children out of a text: whole names, and first and last names where they stand as words of
 * their own. What the child itself is called stays. Meant to take out rather too much than too little.
 */
export function withoutNames({ own, others }: Names): (text: string) => string {
  const ownWords = new Set(wordsOf(own).map(fold))
  const whole = others.filter((name) => fold(name) !== fold(own))
  const parts = whole.flatMap(wordsOf).filter((word) => word.length > 1 && !ownWords.has(fold(word)))
  const names = [...new Set([...whole, ...parts])].toSorted((a, b) => b.length - a.length)
  if (names.length === 0) return (text) => text
  const anyOf = names.map((name) => name.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|')
  const named = new RegExp(`(?<![\\p{L}\\p{N}])(?:${anyOf})(?![\\p{L}\\p{N}])`, 'gu')
  return (text) => text.replaceAll(named, instead)
}

/** The same for every text inside a value read from JSON. */
export function valueWithoutNames(value: unknown, names: Names): unknown {
  const told = new Map<string, string>()
  const plain = withoutNames(names)
  const walk = (one: unknown): unknown => {
    if (typeof one === 'string') {
      // The same few hundred texts stand in tens of thousands of places.
      const known = told.get(one) ?? plain(one)
      told.set(one, known)
      return known
    }
    if (Array.isArray(one)) return one.map(walk)
    if (typeof one !== 'object' || one === null) return one
    return Object.fromEntries(Object.entries(one).map(([key, inner]) => [key, walk(inner)]))
  }
  return walk(value)
}

function wordsOf(name: string): readonly string[] {
  return name.split(/\s+/u).filter(Boolean)
}

function fold(text: string): string {
  return text.toLowerCase()
}
