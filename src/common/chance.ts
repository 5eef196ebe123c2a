/** Numbers from 0 up to but not 1 that look like chance and are the same for the same seed. */
export type Chance = () => number

/** Source: T. Ettinger, mulberry32, public domain; from memory. */
export function seededChance(seed: number): Chance {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = state
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
