/**
 * What each thing is called in a file: the code it came with, or its id where the code is missing, stands twice, or is
 * the id of another. So an import finds every thing again, and never another one.
 */
export function exportKeys(
  things: readonly { readonly id: string; readonly code: string | null }[],
): ReadonlyMap<string, string> {
  const times = new Map<string, number>()
  for (const { id, code } of things) {
    times.set(id, (times.get(id) ?? 0) + 1)
    if (code !== null && code !== id) times.set(code, (times.get(code) ?? 0) + 1)
  }
  return new Map(things.map(({ id, code }) => [id, code !== null && times.get(code) === 1 ? code : id]))
}
