import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'

/** A new face that nobody has joined to a player of the club keeps its name for so many days. */
export const guestNameDays = 28

/** What stands in the place of a guest's name once it has gone. */
export const namelessGuest = 'Guest'

/** Guests who came on this day or before it have lost their name by `today`. */
export function lastDayWithoutName(today: Day): Day {
  return daysLater(today, -guestNameDays)
}

/** Whether a guest's name has gone by `today`: after the last of its days, its first one being counted as day 0. */
export function isNameGone(guestSince: Day, today: Day): boolean {
  return guestSince <= lastDayWithoutName(today)
}
