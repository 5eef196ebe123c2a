import type { Day } from '#common/time'

export function laterDay(one: Day, other: Day): Day {
  return one < other ? other : one
}
