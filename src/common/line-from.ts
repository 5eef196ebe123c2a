/** What something leads to, step by step and itself first, until nothing follows or what was there before. */
export function lineFrom<Key>(first: Key, next: (key: Key) => Key | null): readonly Key[] {
  const line: Key[] = []
  for (let at: Key | null = first; at !== null && !line.includes(at); at = next(at)) line.push(at)
  return line
}

/** Whether what something leads to leads back to it. */
export function leadsBack<Key>(first: Key, next: (key: Key) => Key | null): boolean {
  const second = next(first)
  return second !== null && lineFrom(second, next).includes(first)
}
