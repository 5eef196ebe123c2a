'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import { type Exchange, fetchPractice, type ServerClock, sendWaiting } from '#app/pitch/pitch-sync'
import type { Signal } from '#ui/pitch/saved-line'

const everyMs = 10_000
const afterTapMs = 400

type Sending = {
  readonly signal: Signal
  /** Something was tapped: send soon, with what is tapped in the same moment. */
  readonly soon: () => void
}

/**
 * Exchanges with the server by a timer, when the phone says that it is online, and when the page is looked at again.
 * One exchange at a time, over all tabs of this phone where the browser can tell.
 */
export function useSending(sessionId: string, onClock: (clock: ServerClock) => void): Sending {
  const [signal, setSignal] = useState<Signal>({ kind: 'sending' })
  const isBusy = useRef(false)
  const isAskedAgain = useRef(false)
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined)

  const exchange = useCallback(
    async (how: (id: string) => Promise<Exchange>) => {
      if (isBusy.current) {
        isAskedAgain.current = true
        return
      }
      isBusy.current = true
      try {
        const done = await alone(sessionId, () => how(sessionId))
        if (done?.kind === 'done') {
          onClock(done.clock)
          setSignal({ kind: 'sent' })
        } else if (done) setSignal(done)
      } catch {
        setSignal({ kind: 'notKept' })
      } finally {
        isBusy.current = false
      }
      if (isAskedAgain.current) {
        isAskedAgain.current = false
        await exchange(sendWaiting)
      }
    },
    [sessionId, onClock],
  )

  useEffect(() => {
    const send = () => void exchange(sendWaiting)
    const lookAgain = () => document.visibilityState === 'visible' && send()
    void exchange(fetchPractice).then(() => exchange(sendWaiting))
    const clock = setInterval(lookAgain, everyMs)
    window.addEventListener('online', send)
    window.addEventListener('focus', send)
    document.addEventListener('visibilitychange', send)
    return () => {
      clearInterval(clock)
      clearTimeout(timer.current)
      window.removeEventListener('online', send)
      window.removeEventListener('focus', send)
      document.removeEventListener('visibilitychange', send)
    }
  }, [exchange])

  const soon = useCallback(() => {
    clearTimeout(timer.current)
    timer.current = setTimeout(() => void exchange(sendWaiting), afterTapMs)
  }, [exchange])
  return { signal, soon }
}

/** Null when another tab is at it. */
async function alone(sessionId: string, work: () => Promise<Exchange>): Promise<Exchange | null> {
  if (!('locks' in navigator)) return work()
  return navigator.locks.request(`turnbook-send-${sessionId}`, { ifAvailable: true }, (lock) =>
    lock ? work() : null,
  )
}
