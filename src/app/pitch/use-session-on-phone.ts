'use client'

import { useCallback, useEffect, useMemo, useState } from 'react'
import { deviceId, forgetOld, type KeptEvent, type KeptPractice, keepTapped } from '#app/pitch/pitch-store'
import { useKeptPractice } from '#app/pitch/use-kept-practice'
import { useOfflinePages } from '#app/pitch/use-offline-pages'
import { type PhoneClock, usePitchClock } from '#app/pitch/use-pitch-clock'
import { useSending } from '#app/pitch/use-sending'
import type { TappedEvent } from '#touchline/tapped-event'
import type { OfflinePages, Saved, Signal } from '#ui/pitch/saved-line'

const noEvents: readonly TappedEvent[] = []

/** A practice or match on this phone, whatever it is: what was tapped, and the exchange with the book. */
export type SessionOnPhone = {
  /** Null until the phone has looked; `missing`: it has it not. */
  readonly practice: KeptPractice | 'missing' | null
  /** What counts, of this phone and the others. */
  readonly events: readonly TappedEvent[]
  readonly refused: readonly KeptEvent[]
  readonly saved: Saved
  readonly signal: Signal
  readonly clock: PhoneClock
  readonly pages: OfflinePages
  /** This phone's own name among phones. */
  readonly nameOfPhone: () => Promise<string>
  /** Keeps what was tapped, and sends it soon. */
  readonly keep: (made: readonly TappedEvent[]) => Promise<void>
}

export function useSessionOnPhone(sessionId: string): SessionOnPhone {
  const kept = useKeptPractice(sessionId)
  const clock = usePitchClock()
  const { signal, soon } = useSending(sessionId, clock.hear)
  const pages = useOfflinePages()
  const found = kept === 'notKept' ? null : kept
  const [unkept, setUnkept] = useState(noEvents)
  const events = useMemo(
    // What the book refused counts on no phone, so that all show the same.
    () => [...(found?.events ?? []).filter((event) => event.state !== 'refused'), ...unkept],
    [found?.events, unkept],
  )
  const isHere = (found?.practice ?? null) !== null
  useEffect(() => {
    // Where space runs short the browser would rather throw away what nobody asked it to keep.
    if (isHere) void navigator.storage?.persist?.().catch(() => false)
    if (isHere) void forgetOld(Date.now(), sessionId).catch(() => undefined)
  }, [isHere, sessionId])
  const keep = useCallback(
    async (made: readonly TappedEvent[]) => {
      try {
        await keepTapped(sessionId, made)
        soon()
      } catch {
        setUnkept((before) => [...before, ...made])
      }
    },
    [sessionId, soon],
  )
  const all = found?.events ?? []
  const refused = all.filter((event) => event.state === 'refused')
  const told: Signal = kept === 'notKept' || unkept.length > 0 ? { kind: 'notKept' } : signal
  return {
    practice: kept === null ? null : (found?.practice ?? 'missing'),
    events,
    refused,
    saved: {
      tapped: all.length,
      waiting: all.filter((event) => event.state === 'waiting').length,
      refused: refused.length,
      sentAt: timeWords(isHere ? (found?.practice?.sentAt ?? null) : null),
      signal: told,
    },
    signal: told,
    clock,
    pages,
    nameOfPhone: deviceId,
    keep,
  }
}

function timeWords(at: number | null): string | null {
  return at === null ? null : new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })
}
