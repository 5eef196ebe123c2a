import type { Day } from '#common/time'

export function earlierDay(one: Day, other: Day): Day {
  return one < other ? one : other
}
