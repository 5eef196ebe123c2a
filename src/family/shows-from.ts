import { daysLater } from '#common/days-later'
import type { Day } from '#common/time'

const hour = 8
const minuteMs = 60_000

/**
 * When families begin to see what was confirmed on a day of the club: the next morning at eight by the club's clocks,
 * whatever they did in the night.
 */
export function showsFrom({
  confirmedOn,
  timeZone,
}: {
  readonly confirmedOn: Day
  readonly timeZone: string
}): Date {
  const wanted = Date.parse(`${daysLater(confirmedOn, 1)}T00:00:00Z`) + hour * 60 * minuteMs
  // By the clocks' difference there; once more by the one that then holds, since clocks may have been changed between.
  const near = wanted - clocksAhead(timeZone, wanted)
  return new Date(wanted - clocksAhead(timeZone, near))
}

/** How far a zone's clocks are ahead of UTC at an instant, in milliseconds. */
function clocksAhead(timeZone: string, instant: number): number {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(instant)
  const of = (type: Intl.DateTimeFormatPartTypes) =>
    Number(parts.find((part) => part.type === type)?.value ?? 0)
  const shown = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'), of('second'))
  return shown - Math.floor(instant / 1000) * 1000
}
