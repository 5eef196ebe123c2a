import type { EpochMs } from '#pitch/pitch-event'

/** What a phone's two clocks say at one moment. */
export type ClockReading = {
  /** The clock on the wall of the phone (`Date.now()`): goes on in sleep, but may be set by hand at any time. */
  readonly wall: EpochMs
  /** Milliseconds since the page was opened (`performance.now()`): never set, but may stand still in sleep. */
  readonly steady: number
  /** Whether the page was hidden, frozen or closed at any time since the reading before: the phone may have slept. */
  readonly wasHidden: boolean
}

/** The time of a practice on one phone: carried on from the last reading, never from the wall clock alone. */
export type PitchClock = {
  readonly wall: EpochMs
  readonly steady: number
  /** The right time at that reading, as well as it is known. */
  readonly time: EpochMs
  /** Nothing may be written down as having been before this. */
  readonly floor: EpochMs
}

/** What is kept on the phone between two pages, written at every reading that matters. */
export type KeptClock = { readonly wall: EpochMs; readonly time: EpochMs }

/** A phone whose clock is far ahead must not draw the others after it: its taps are no floor for theirs. */
const farAhead = 2 * 60_000

/**
 * The clock of a page that opens. With what an earlier page kept, the time goes on from there: as much later as the wall
 * clock says, or not at all where that was set back meanwhile. Else the wall clock is believed until the server is heard.
 */
export function openClock(reading: ClockReading, kept: KeptClock | null): PitchClock {
  const { wall, steady } = reading
  const time = kept ? kept.time + Math.max(0, wall - kept.wall) : wall
  return { wall, steady, time, floor: kept?.time ?? Number.NEGATIVE_INFINITY }
}

/**
 * Carries the clock on to a reading. While the page was open the steady clock counts: whoever sets the wall clock then
 * changes nothing. Where it was hidden the phone may have slept, and the steady clock with it: then the longer of the
 * two counts, as the steady clock is never too fast and a wall clock set back says too little. A wall clock that was set
 * ahead behind a hidden page is believed until the server is heard.
 */
export function carryOn(clock: PitchClock, reading: ClockReading): PitchClock {
  const steady = Math.max(0, reading.steady - clock.steady)
  const wall = reading.wall - clock.wall
  const passed = reading.wasHidden ? Math.max(steady, wall) : steady
  return { ...clock, wall: reading.wall, steady: reading.steady, time: clock.time + passed }
}

/**
 * Sets the clock right by the server's: `serverNow` was true somewhere between the sending of the request and the
 * reading, most likely half way. Where something was written down as later than that already, the clock goes on as it
 * is: what follows must not be before it, and balls must keep their lengths.
 */
export function heardServer(
  clock: PitchClock,
  heard: { readonly reading: ClockReading; readonly serverNow: EpochMs; readonly sentSteady: number },
): PitchClock {
  const carried = carryOn(clock, heard.reading)
  const trip = Math.max(0, heard.reading.steady - heard.sentSteady)
  const time = heard.serverNow + trip / 2
  return time > carried.floor ? { ...carried, time } : carried
}

/** Nothing that is tapped from now on was before what another phone wrote down, unless that one's clock is far ahead. */
export function notBefore(clock: PitchClock, events: readonly { readonly at: EpochMs }[]): PitchClock {
  const seen = events.map(({ at }) => at).filter((at) => at <= clock.time + farAhead)
  return { ...clock, floor: Math.max(clock.floor, ...seen) }
}

/** The time now, for the screen: whole milliseconds, never before what was written down. */
export function timeOf(clock: PitchClock): EpochMs {
  return Math.floor(Math.max(clock.time, clock.floor))
}

/** The time of a tap at a reading: later than every tap before it. */
export function stampTap(
  clock: PitchClock,
  reading: ClockReading,
): { readonly clock: PitchClock; readonly at: EpochMs } {
  const carried = carryOn(clock, reading)
  const at = Math.floor(Math.max(carried.time, carried.floor + 1))
  return { clock: { ...carried, floor: at }, at }
}

export function keepClock(clock: PitchClock): KeptClock {
  return { wall: clock.wall, time: timeOf(clock) }
}
