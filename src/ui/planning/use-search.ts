'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
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

export type Search = {
  /** Null: none is running. */
  readonly search: SearchClock | null
  /** The last one failed. */
  readonly hasFailed: boolean
  readonly searchNow: () => void
  /** Ends it where it is, and takes what it has. */
  readonly stop: () => void
  /** Ends it, and takes nothing more of it. */
  readonly forget: () => void
}

/**
 * A search beside the page: it begins by itself a moment after what is asked has changed, unless all is settled, and ends
 * when that changes again. `run`, which is another whenever what is asked is another; null: there is nothing to look for.
 */
export function useSearch(
  run: RunSearch | null,
  { isSettled, pauseMs }: { readonly isSettled: boolean; readonly pauseMs: number },
): Search {
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
  const searchNow = useCallback(() => {
    if (!run) return
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
      .then((end) => isWanted() && setHasFailed(end === 'failed'))
      .catch(() => setHasFailed(true))
      .finally(() => {
        clearInterval(clock)
        if (!isWanted()) return
        running.current = null
        setSearch(null)
      })
  }, [run])
  // A search of something else than what the page asks is of no use any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what is asked that counts
  useEffect(() => () => running.current?.abort(), [run])
  useEffect(() => {
    if (isSettled) return
    const timer = setTimeout(searchNow, pauseMs)
    return () => clearTimeout(timer)
  }, [isSettled, searchNow, pauseMs])
  return { search, hasFailed, searchNow, stop, forget }
}
