import type { Day } from '#common/time'

const minuteMs = 60_000

/** The instant at which the clocks of a time zone show a minute of a day, whatever was done to them in the night. */
export function instantOf({
  day,
  minute = 0,
  timeZone,
}: {
  readonly day: Day
  /** Since midnight by the clock. */
  readonly minute?: number
  readonly timeZone: string
}): Date {
  const wanted = Date.parse(`${day}T00:00:00Z`) + minute * minuteMs
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
