'use client'

import { useCallback, useEffect, useMemo, useRef } from 'react'
import { v7 as uuidv7 } from 'uuid'
import type { SessionOnPhone } from '#app/pitch/use-session-on-phone'
import type { PitchEvent } from '#pitch/pitch-event'
import type { TappedDeed, TappedEvent } from '#touchline/tapped-event'

type Known<Done, State> = { readonly events: readonly PitchEvent<Done>[]; readonly state: State }

export type Taps<Done, State> = Known<Done, State> & {
  /** As of the last tap, before the screen has shown it. */
  readonly current: () => Known<Done, State>
  readonly tap: (make: (before: State) => readonly Done[]) => Promise<void>
}

/** What was tapped of one session, what `fold` makes of it, and the way to tap more: each is kept before it is shown. */
export function useTaps<Done extends TappedDeed, State>(
  { events: tapped, clock, nameOfPhone, keep }: SessionOnPhone,
  fold: (events: readonly PitchEvent<Done>[]) => State,
): Taps<Done, State> {
  // One session has deeds of one kind only.
  const events = tapped as readonly PitchEvent<Done>[]
  const state = useMemo(() => fold(events), [fold, events])
  const latest = useRef<Known<Done, State>>({ events, state })
  useEffect(() => {
    latest.current = { events, state }
    clock.see(events)
  }, [events, state, clock])
  const tap = useCallback(
    async (make: (before: State) => readonly Done[]) => {
      const device = await nameOfPhone().catch(() => uuidv7())
      const made = make(latest.current.state).map(
        (deed): PitchEvent<Done> => ({ id: uuidv7(), deviceId: device, at: clock.stamp(), deed }),
      )
      const all = [...latest.current.events, ...made]
      latest.current = { events: all, state: fold(all) }
      await keep(made as readonly TappedEvent[])
    },
    [clock, fold, nameOfPhone, keep],
  )
  const current = useCallback(() => latest.current, [])
  return { events, state, current, tap }
}
