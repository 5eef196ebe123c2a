import type { MatchFormat } from '#match/format/match-format'

/** The parts in which two formats differ, however each is called. */
export function formatChanges(one: MatchFormat, other: MatchFormat): readonly (keyof MatchFormat)[] {
  const parts = Object.keys(one) as (keyof MatchFormat)[]
  return parts.filter((part) => part !== 'name' && !isSame(one[part], other[part]))
}

function isSame(one: unknown, other: unknown): boolean {
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other
  const keys = Object.keys(one)
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => isSame(Reflect.get(one, key), Reflect.get(other, key)))
  )
}
