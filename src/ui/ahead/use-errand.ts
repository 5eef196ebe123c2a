'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import type { SearchClock } from '#ui/planning/running-search'

export type Errand<Found> = {
  /** Null: nothing was asked, or what was asked is of no use any more. */
  readonly found: Found | null
  /** Null: none is running. */
  readonly clock: SearchClock | null
  readonly hasFailed: boolean
  readonly run: (
    ask: (watch: { readonly timeLimitMs: number; readonly signal: AbortSignal }) => Promise<Found | null>,
  ) => void
  readonly stop: () => void
}

const tickMs = 250

/** Something that is asked for once, takes a while, and can be stopped. `about`: another one, and what was found is forgotten. */
export function useErrand<Found>(about: unknown, limitMs: number): Errand<Found> {
  const [found, setFound] = useState<Found | null>(null)
  const [clock, setClock] = useState<SearchClock | null>(null)
  const [hasFailed, setHasFailed] = useState(false)
  const running = useRef<AbortController | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what it is about that counts
  useEffect(
    () => () => {
      running.current?.abort()
      running.current = null
      setFound(null)
      setClock(null)
    },
    [about],
  )
  const run: Errand<Found>['run'] = useCallback(
    (ask) => {
      running.current?.abort()
      const own = new AbortController()
      running.current = own
      const began = performance.now()
      setHasFailed(false)
      setClock({ elapsedMs: 0, limitMs })
      const ticking = setInterval(() => {
        if (running.current === own) setClock({ elapsedMs: performance.now() - began, limitMs })
      }, tickMs)
      void ask({ timeLimitMs: limitMs, signal: own.signal })
        .then((answer) => running.current === own && setFound(answer))
        .catch(() => running.current === own && setHasFailed(true))
        .finally(() => {
          clearInterval(ticking)
          if (running.current === own) setClock(null)
        })
    },
    [limitMs],
  )
  return { found, clock, hasFailed, run, stop: useCallback(() => running.current?.abort(), []) }
}
