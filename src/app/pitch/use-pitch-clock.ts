'use client'

import { useEffect, useMemo } from 'react'
import type { ServerClock } from '#app/pitch/pitch-sync'
import {
  type ClockReading,
  carryOn,
  heardServer,
  type KeptClock,
  keepClock,
  notBefore,
  openClock,
  type PitchClock,
  stampTap,
  timeOf,
} from '#pitch/pitch-clock'

const name = 'turnbook-clock'
const keepEveryMs = 5_000
/** An answer that took so long says little about what time it is. */
const longTripMs = 4_000

export type PhoneClock = {
  /** The time for the screen. */
  readonly now: () => number
  /** The time of something tapped now: later than everything tapped before. */
  readonly stamp: () => number
  readonly hear: (server: ServerClock) => void
  /** Nothing tapped from now on was before these. */
  readonly see: (events: readonly { readonly at: number }[]) => void
}

/** The clock of this phone: goes on through sleep, lock and reload, whatever is done to the phone's own. */
export function usePitchClock(): PhoneClock {
  const clock = useMemo(startClock, [])
  useEffect(() => {
    const timer = setInterval(clock.keep, keepEveryMs)
    const hidden = () => {
      clock.keep()
      clock.hide()
    }
    document.addEventListener('visibilitychange', hidden)
    window.addEventListener('pagehide', hidden)
    return () => {
      clock.keep()
      clearInterval(timer)
      document.removeEventListener('visibilitychange', hidden)
      window.removeEventListener('pagehide', hidden)
    }
  }, [clock])
  return clock
}

function startClock() {
  let wasHidden = false
  const read = (): ClockReading => {
    const reading = { wall: Date.now(), steady: performance.now(), wasHidden }
    // Behind a locked screen the phone may fall asleep again after this.
    wasHidden = document.visibilityState === 'hidden'
    return reading
  }
  let clock: PitchClock = openClock(read(), keptClock())
  const keep = () => {
    clock = carryOn(clock, read())
    try {
      localStorage.setItem(name, JSON.stringify(keepClock(clock)))
    } catch {
      // Nothing can be kept here: after a reload the phone's own clock is believed.
    }
  }
  return {
    keep,
    hide: () => {
      wasHidden = true
    },
    now: () => {
      clock = carryOn(clock, read())
      return timeOf(clock)
    },
    stamp: () => {
      const stamped = stampTap(clock, read())
      clock = stamped.clock
      keep()
      return stamped.at
    },
    hear: ({ sentSteady, receivedSteady, serverNow }: ServerClock) => {
      if (wasHidden || receivedSteady - sentSteady > longTripMs) return
      const reading = read()
      // What has passed since the answer came is not part of its way.
      const since = reading.steady - receivedSteady
      clock = heardServer(clock, { reading, serverNow: serverNow + since, sentSteady: sentSteady + since })
      keep()
    },
    see: (events: readonly { readonly at: number }[]) => {
      clock = notBefore(carryOn(clock, read()), events)
    },
  }
}

function keptClock(): KeptClock | null {
  try {
    const kept = JSON.parse(localStorage.getItem(name) ?? 'null')
    return typeof kept?.wall === 'number' && typeof kept?.time === 'number' ? kept : null
  } catch {
    return null
  }
}

/** Nothing of the clock stays on this phone. */
export function forgetClock(): void {
  localStorage.removeItem(name)
}
