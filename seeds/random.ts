/** A stream of numbers in [0, 1), the same for the same words on every machine. */
export type Random = () => number

/**
 * A random stream of its own for a named thing, so that a change to one session of the demo does not stir all later ones.
 * FNV-1a (Fowler, Noll, Vo) spreads the words, mulberry32 (Tommy Ettinger, public domain) draws; both written from memory.
 */
export function randomFor(words: string): Random {
  let state = hashOf(words)
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
}

/** A whole number from `least` to `most`, both possible. */
export function wholeBetween(
  random: Random,
  range: { readonly least: number; readonly most: number },
): number {
  return range.least + Math.floor(random() * (range.most - range.least + 1))
}

function hashOf(words: string): number {
  let hash = 0x811c9dc5
  for (const letter of words) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193)
  return hash
}
