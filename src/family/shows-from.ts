import { daysLater } from '#common/days-later'
import { instantOf } from '#common/instant-of'
import type { Day } from '#common/time'

const eightInTheMorning = 8 * 60

/** When families begin to see what was confirmed on a day of the club: the next morning at eight by the club's clocks. */
export function showsFrom({
  confirmedOn,
  timeZone,
}: {
  readonly confirmedOn: Day
  readonly timeZone: string
}): Date {
  return instantOf({ day: daysLater(confirmedOn, 1), minute: eightInTheMorning, timeZone })
}
