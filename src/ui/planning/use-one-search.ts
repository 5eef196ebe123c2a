'use client'

import { useCallback, useRef, useState } from 'react'
import type { SearchClock } from '#ui/planning/running-search'

/** How long an exact search may look. */
const limitMs = 10_000
const tickMs = 250

export type RunSearch = (watch: {
  readonly timeLimitMs: number
  readonly signal: AbortSignal
  /** False once another search, or none, is wanted: what comes then is left out. */
  readonly isWanted: () => boolean
}) => Promise<'done' | 'failed'>

export type OneSearch = {
  /** Null: none is running. */
  readonly search: SearchClock | null
  /** The last one failed. */
  readonly hasFailed: boolean
  /** Ends the one that is running. */
  readonly start: (run: RunSearch) => void
  /** Ends it where it is, and takes what it has. */
  readonly stop: () => void
  /** Ends it, and takes nothing more of it. */
  readonly forget: () => void
}

/** Searches beside the page, one at a time, with their clock. */
export function useOneSearch(): OneSearch {
  const [search, setSearch] = useState<SearchClock | null>(null)
  const [hasFailed, setHasFailed] = useState(false)
  const running = useRef<AbortController | null>(null)
  const stop = useCallback(() => running.current?.abort(), [])
  const forget = useCallback(() => {
    const own = running.current
    running.current = null
    own?.abort()
    setSearch(null)
  }, [])
  const start = useCallback((run: RunSearch) => {
    running.current?.abort()
    const own = new AbortController()
    running.current = own
    const isWanted = () => running.current === own
    setHasFailed(false)
    setSearch({ elapsedMs: 0, limitMs })
    const began = performance.now()
    const clock = setInterval(() => {
      if (isWanted()) setSearch({ elapsedMs: performance.now() - began, limitMs })
    }, tickMs)
    void run({ timeLimitMs: limitMs, signal: own.signal, isWanted })
      .catch(() => 'failed' as const)
      .then((end) => isWanted() && setHasFailed(end === 'failed'))
      .finally(() => {
        clearInterval(clock)
        if (!isWanted()) return
        running.current = null
        setSearch(null)
      })
  }, [])
  return { search, hasFailed, start, stop, forget }
}
