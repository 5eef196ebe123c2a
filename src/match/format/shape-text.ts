import type { LinePlaces, Shape } from '#match/format/match-format'

/**
 * A shape as coaches write it, from the back to the front and without the keeper: "2-3-1". Two numbers are back and
 * forward, one is the middle; what is between the first and the last of four or more is all middle. Null: no shape.
 */
export function shapeOfText(text: string, { hasKeeper }: { readonly hasKeeper: boolean }): Shape | null {
  const name = text.trim().replaceAll(/\s*[-–]\s*/g, '-')
  if (!/^\d{1,2}(-\d{1,2}){0,4}$/.test(name)) return null
  const [first = 0, ...rest] = name.split('-').map(Number)
  const keeper = hasKeeper ? 1 : 0
  const last = rest.pop()
  if (last === undefined) return { name, places: { keeper, back: 0, middle: first, forward: 0 } }
  const middle = rest.reduce((sum, places) => sum + places, 0)
  return { name, places: { keeper, back: first, middle, forward: last } }
}

/** What `shapeOfText` reads as the same places: the shape's own name where it is that. */
export function textOfShape({ name, places }: Shape): string {
  const read = shapeOfText(name, { hasKeeper: places.keeper > 0 })
  return read && isSame(read.places, places) ? name : `${places.back}-${places.middle}-${places.forward}`
}

function isSame(one: LinePlaces, other: LinePlaces): boolean {
  return (['keeper', 'back', 'middle', 'forward'] as const).every((line) => one[line] === other[line])
}
