/** First name and the initial of the last: what somebody who helps for an evening is told of a child. */
export function shortName(name: string): string {
  const [first = '', ...others] = name.trim().split(/\s+/)
  const initial = others.at(-1)?.match(/[\p{L}\p{N}]\p{M}*/u)?.[0]
  return initial ? `${first} ${initial}.` : first
}
