import type { Day } from '#common/time'

const minuteMs = 60_000
// No zone is further from UTC, and none changes its clocks twice within two.
const dayMs = 24 * 60 * minuteMs

/**
 * The instant at which the clocks of a time zone show a minute of a day. Shown twice, it is the first time; never shown,
 * it is reckoned by the clocks as they were before the gap (RFC 5545, 3.3.5).
 */
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
  const before = clocksAhead(timeZone, wanted - dayMs)
  const after = clocksAhead(timeZone, wanted + dayMs)
  const early = wanted - before
  const late = wanted - after
  const isLate = clocksAhead(timeZone, early) !== before && clocksAhead(timeZone, late) === after
  return new Date(isLate ? late : early)
}

/** How far a zone's clocks are ahead of UTC at an instant, in milliseconds. */
function clocksAhead(timeZone: string, instant: number): number {
  const parts = clockOf(timeZone).formatToParts(instant)
  const of = (type: Intl.DateTimeFormatPartTypes) =>
    Number(parts.find((part) => part.type === type)?.value ?? 0)
  const shown = Date.UTC(of('year'), of('month') - 1, of('day'), of('hour'), of('minute'), of('second'))
  return shown - Math.floor(instant / 1000) * 1000
}

// Made once for each zone: making one takes longer than all that it is asked for.
const clocks = new Map<string, Intl.DateTimeFormat>()

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const known = clocks.get(timeZone)
  if (known) return known
  const clock = new Intl.DateTimeFormat('en-GB', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  })
  clocks.set(timeZone, clock)
  return clock
}
