'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import {
  draftOf,
  type LineUpDraft,
  withClash,
  withLock,
  withoutLock,
  withSolved,
  withSwap,
} from '#lineup/draft/line-up-draft'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import type { LineUpSwap } from '#lineup/draft/swap-line-up'
import type { MatchPlanRequest } from '#lineup/match-plan'

/** A search that is running, or nothing. */
export type LineUpSearch = { readonly elapsedMs: number; readonly limitMs: number } | null

type Place = { readonly player: number; readonly window: number }

export type LineUpEditing = {
  readonly draft: LineUpDraft
  readonly search: LineUpSearch
  /** What went wrong with the last search; null: nothing. */
  readonly fault: string | null
  readonly ask: (change: (request: MatchPlanRequest) => MatchPlanRequest) => void
  readonly swap: (swap: LineUpSwap) => void
  readonly lock: (at: Place) => void
  readonly unlock: (at: Place) => void
  readonly searchNow: () => void
  readonly stop: () => void
  /** Ends the search where it is and leaves the line-up as it stands on the page: it is being saved. */
  readonly settle: () => void
  readonly undo: () => void
  readonly canUndo: boolean
}

/** How long the exact solver may look, and how long it waits for the next change before it begins. */
const limitMs = 10_000
const pauseMs = 400
const stepsBack = 60

/**
 * A line-up being made: every change of what is asked has its line-up at once, and the exact solver betters it by itself.
 * What the coach's hand changed stays until it asks for a new search.
 */
export function useLineUpDraft(first: () => LineUpDraft, solver: LineUpSolver): LineUpEditing {
  const [{ draft, past }, setState] = useState(() => ({
    draft: first(),
    past: [] as readonly LineUpDraft[],
  }))
  const [search, setSearch] = useState<LineUpSearch>(null)
  const [fault, setFault] = useState<string | null>(null)
  const running = useRef<AbortController | null>(null)
  const shown = useRef(draft)
  useEffect(() => {
    shown.current = draft
  })

  const change = useCallback((to: (draft: LineUpDraft) => LineUpDraft) => {
    setState((state) => {
      const next = to(state.draft)
      if (next === state.draft) return state
      return { draft: next, past: [...state.past.slice(-stepsBack), state.draft] }
    })
  }, [])
  /** What a search finds is no step of the coach's, and is not undone by itself. */
  const take = useCallback((to: (draft: LineUpDraft) => LineUpDraft) => {
    setState((state) => ({ ...state, draft: to(state.draft) }))
  }, [])
  const stop = useCallback(() => running.current?.abort(), [])
  const settle = useCallback(() => {
    const own = running.current
    running.current = null
    own?.abort()
    setSearch(null)
    take((now) => ({ ...now, isSettled: true }))
  }, [take])

  const { problem, isSettled } = draft
  const searchNow = useCallback(() => {
    running.current?.abort()
    const own = new AbortController()
    running.current = own
    setFault(null)
    setSearch({ elapsedMs: 0, limitMs })
    const began = performance.now()
    const clock = setInterval(() => {
      if (running.current === own) setSearch({ elapsedMs: performance.now() - began, limitMs })
    }, 250)
    void solver(problem, {
      start: shown.current.problem === problem ? (shown.current.made?.plan ?? null) : null,
      timeLimitMs: limitMs,
      signal: own.signal,
      onBetter: (best) => {
        if (running.current === own) take((now) => withSolved(now, { problem, best, isEnd: false }))
      },
    })
      .then((end) => {
        if (running.current !== own) return
        if (end.kind === 'impossible') take((now) => withClash(now, { problem, clash: end.clash }))
        else take((now) => withSolved(now, { problem, best: end.best, isEnd: true }))
        if (end.kind === 'failed') setFault(noSearch)
      })
      .catch(() => setFault(noSearch))
      .finally(() => {
        clearInterval(clock)
        if (running.current !== own) return
        running.current = null
        setSearch(null)
      })
  }, [problem, solver, take])

  // A search of another problem than the page's is of no use any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of problem that counts
  useEffect(() => () => running.current?.abort(), [problem])
  useEffect(() => {
    if (isSettled) return
    const timer = setTimeout(searchNow, pauseMs)
    return () => clearTimeout(timer)
  }, [isSettled, searchNow])

  return {
    draft,
    search,
    fault,
    ask: useCallback((to) => change((now) => draftOf(to(now.request))), [change]),
    swap: useCallback((swap) => change((now) => withSwap(now, swap)), [change]),
    lock: useCallback((at) => change((now) => withLock(now, at)), [change]),
    unlock: useCallback((at) => change((now) => withoutLock(now, at)), [change]),
    searchNow,
    stop,
    settle,
    undo: useCallback(
      () => setState((state) => ({ draft: state.past.at(-1) ?? state.draft, past: state.past.slice(0, -1) })),
      [],
    ),
    canUndo: past.length > 0,
  }
}

const noSearch =
  'The search for a fairer line-up failed on this device. The one on the page keeps every rule all the same.'
