/** A generator of chance that gives the same numbers for the same seed: mulberry32 (Tommy Ettinger, public domain; from memory). */
export type SeededRandom = {
  /** From 0 up to but not 1. */
  readonly next: () => number
  /** A whole number from `least` to `most`, both possible. */
  readonly whole: (least: number, most: number) => number
  readonly chance: (share: number) => boolean
  readonly pick: <Item>(items: readonly Item[]) => Item
  readonly shuffle: <Item>(items: readonly Item[]) => Item[]
}

export function seededRandom(seed: number): SeededRandom {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = state
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1))
  const pick = <Item>(items: readonly Item[]): Item => {
    if (items.length === 0) throw new Error('Nothing to pick from.')
    return items[whole(0, items.length - 1)] as Item
  }
  const shuffle = <Item>(items: readonly Item[]): Item[] => {
    const left = [...items]
    const drawn: Item[] = []
    while (left.length > 0) drawn.push(...left.splice(whole(0, left.length - 1), 1))
    return drawn
  }
  return { next, whole, chance: (share) => next() < share, pick, shuffle }
}
