'use client'

import { useCallback, useEffect, useState } from 'react'
import { type OneSearch, useOneSearch } from '#ui/planning/use-one-search'

export type Errand<Found> = Pick<OneSearch, 'search' | 'hasFailed' | 'stop'> & {
  /** Null: nothing was asked, or what was asked is of no use any more. */
  readonly found: Found | null
  readonly run: (
    ask: (watch: { readonly timeLimitMs: number; readonly signal: AbortSignal }) => Promise<Found | null>,
  ) => void
}

/** Something that is asked for once, takes a while, and can be stopped. `about`: another one, and what was found is forgotten. */
export function useErrand<Found>(about: unknown): Errand<Found> {
  const [found, setFound] = useState<Found | null>(null)
  const { start, forget, ...search } = useOneSearch()
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of what it is about that counts
  useEffect(
    () => () => {
      forget()
      setFound(null)
    },
    [about, forget],
  )
  const run: Errand<Found>['run'] = useCallback(
    (ask) =>
      start(async ({ isWanted, ...watch }) => {
        const answer = await ask(watch)
        if (isWanted()) setFound(answer)
        return 'done'
      }),
    [start],
  )
  return { ...search, found, run }
}
