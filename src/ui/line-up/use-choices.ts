'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'

/** A choice with what it comes to, in words. */
export type FoundChoice = LineUpChoice & { readonly says: string; readonly isProven: boolean }

/** Looks for choices: each step ends with what it found. More steps may come of one. */
export type FindChoices = (watch: {
  readonly found: (choice: FoundChoice) => void
  /** How many steps are done, of how many. */
  readonly progress: (done: number, of: number) => void
  readonly signal: AbortSignal
}) => Promise<void>

export type Choices = {
  readonly found: readonly FoundChoice[]
  /** Null: nothing is being looked for. */
  readonly progress: { readonly done: number; readonly of: number } | null
  readonly isOver: boolean
  readonly start: () => void
  readonly stop: () => void
}

/** What a search for choices has found so far. Another search than the one that ran begins with nothing. */
export function useChoices(find: FindChoices): Choices {
  const [state, setState] = useState<
    (Omit<Choices, 'start' | 'stop'> & { readonly find: FindChoices }) | null
  >(null)
  const running = useRef<AbortController | null>(null)
  const own = state?.find === find ? state : null
  const start = useCallback(() => {
    running.current?.abort()
    const control = new AbortController()
    running.current = control
    const { signal } = control
    setState({ find, found: [], progress: { done: 0, of: 1 }, isOver: false })
    const change = (to: Partial<Choices> | ((found: readonly FoundChoice[]) => readonly FoundChoice[])) =>
      setState((now) => {
        if (now?.find !== find || running.current !== control) return now
        return typeof to === 'function' ? { ...now, found: to(now.found) } : { ...now, ...to }
      })
    void find({
      found: (choice) => signal.aborted || change((found) => [...found, choice]),
      progress: (done, of) => change({ progress: { done, of } }),
      signal,
    })
      .catch(() => {})
      .finally(() => change({ progress: null, isOver: true }))
  }, [find])
  // Of another search nothing is wanted any more, nor after the page is left.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the search that counts
  useEffect(() => () => running.current?.abort(), [find])
  return {
    found: own?.found ?? [],
    progress: own?.progress ?? null,
    isOver: own?.isOver ?? false,
    start,
    stop: useCallback(() => running.current?.abort(), []),
  }
}
