import type { Day } from '#common/time'

/** From a day to a day, both included; `lastDay` null: until further notice. */
export type Dated = { readonly firstDay: Day; readonly lastDay: Day | null }

export function hasDay({ firstDay, lastDay }: Dated, day: Day): boolean {
  return firstDay <= day && (lastDay === null || day <= lastDay)
}

/** Whether any day lies in both. */
export function shareADay(one: Dated, other: Dated): boolean {
  return (
    (one.lastDay === null || other.firstDay <= one.lastDay) &&
    (other.lastDay === null || one.firstDay <= other.lastDay)
  )
}
