import type { PlayerId } from '#squad/player'

type Named = { readonly id: PlayerId; readonly name: string }

/**
 * First names, told apart: where two of the list share one, as many letters of the next name stand behind it as it
 * takes, and where even the whole names are the same, the number that they carry. For sheets on which nothing else of a
 * name is to stand.
 */
export function shortNames(players: readonly Named[]): ReadonlyMap<PlayerId, string> {
  const parts = players.map(({ id, name }) => {
    const [first = '', ...rest] = name.trim().split(/\s+/)
    return { id, first, rest: rest.join(' ') }
  })
  return new Map(
    parts.map((own) => {
      const others = parts.filter((other) => other.id !== own.id && other.first === own.first)
      return [own.id, others.length === 0 ? own.first : withLetters(own, others)]
    }),
  )
}

function withLetters(
  { first, rest }: { readonly first: string; readonly rest: string },
  others: readonly { readonly rest: string }[],
): string {
  const letters = [...rest]
  for (let count = 1; count < letters.length; count += 1) {
    const begun = letters.slice(0, count).join('')
    if (others.every((other) => !other.rest.startsWith(begun))) return `${first} ${begun}.`
  }
  return rest === '' ? first : `${first} ${rest}`
}
