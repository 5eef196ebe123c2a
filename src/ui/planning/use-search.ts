'use client'

import { useCallback, useEffect } from 'react'
import { type OneSearch, type RunSearch, useOneSearch } from '#ui/planning/use-one-search'

export type Search = Omit<OneSearch, 'start'> & { readonly searchNow: () => void }

/**
 * A search beside the page: it begins by itself a moment after what is asked has changed, unless all is settled, and ends
 * when that changes again. `run`, which is another whenever what is asked is another; null: there is nothing to look for.
 */
export function useSearch(
  run: RunSearch | null,
  { isSettled, pauseMs }: { readonly isSettled: boolean; readonly pauseMs: number },
): Search {
  const { start, ...search } = useOneSearch()
  const { stop } = search
  const searchNow = useCallback(() => {
    if (run) start(run)
  }, [run, start])
  // A search of something else than what the page asks is of no use any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what is asked that counts
  useEffect(() => stop, [run, stop])
  useEffect(() => {
    if (isSettled) return
    const timer = setTimeout(searchNow, pauseMs)
    return () => clearTimeout(timer)
  }, [isSettled, searchNow, pauseMs])
  return { ...search, searchNow }
}
