/** A value as text, its keys in order of the alphabet, to be compared with another: a database keeps no order of its own. */
export function inOneOrder(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  )
}
