'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import {
  draftOf,
  type PlanDraft,
  planOfDraft,
  withLock,
  withoutLock,
  withShown,
  withSolved,
  withSwap,
} from '#planning/plan-draft'
import type { PlanSolver } from '#planning/plan-solver'
import type { PlanRequest, PracticePlan } from '#planning/practice-plan'
import { isSamePlan } from '#planning/same-plan'
import type { Swap } from '#planning/swap'

/** A search that is running, or nothing. */
export type PlanSearch = { readonly elapsedMs: number; readonly limitMs: number } | null

export type PlanEditing = {
  readonly draft: PlanDraft
  readonly search: PlanSearch
  /** What went wrong with the last search; null: nothing. */
  readonly fault: string | null
  readonly ask: (change: (request: PlanRequest) => PlanRequest) => void
  readonly swap: (swap: Swap) => void
  readonly lock: (at: { readonly turn: number; readonly player: number }) => void
  readonly unlock: (at: { readonly turn: number; readonly player: number }) => void
  readonly searchNow: () => void
  readonly stop: () => void
  /** Ends the search where it is and leaves the plan as it stands on the page: it is being saved. */
  readonly settle: () => void
  /** The plan was saved: what it shows to somebody early is held, where the draft is that plan still. */
  readonly hold: (shown: PracticePlan) => void
  readonly undo: () => void
  readonly canUndo: boolean
}

/** How long the exact solver may look, and how long it waits for the next change before it begins. */
const limitMs = 10_000
const pauseMs = 500
const stepsBack = 60

/**
 * A plan being made: every change of what is asked has its plan at once, and the exact solver betters it by itself. What
 * the coach's hand changed stays until it asks for a new search.
 */
export function usePlanDraft(first: () => PlanDraft, solver: PlanSolver): PlanEditing {
  const [{ draft, past }, setState] = useState(() => ({ draft: first(), past: [] as readonly PlanDraft[] }))
  const [search, setSearch] = useState<PlanSearch>(null)
  const [fault, setFault] = useState<string | null>(null)
  const running = useRef<AbortController | null>(null)

  const change = useCallback((to: (draft: PlanDraft) => PlanDraft) => {
    setState((state) => {
      const next = to(state.draft)
      return next === state.draft
        ? state
        : { draft: next, past: [...state.past.slice(-stepsBack), state.draft] }
    })
  }, [])
  /** What a search finds is no step of the coach's, and is not undone by itself. */
  const take = useCallback((to: (draft: PlanDraft) => PlanDraft) => {
    setState((state) => ({ ...state, draft: to(state.draft) }))
  }, [])
  const stop = useCallback(() => running.current?.abort(), [])
  const settle = useCallback(() => {
    const own = running.current
    running.current = null
    own?.abort()
    setSearch(null)
    take((now) => (now.made ? { ...now, made: { ...now.made, isSettled: true } } : now))
  }, [take])

  const problem = draft.made?.problem ?? null
  const plan = useRef(draft.made?.plan ?? null)
  useEffect(() => {
    plan.current = draft.made?.plan ?? null
  })
  const searchNow = useCallback(() => {
    const start = plan.current
    if (!problem || !start) return
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
      start,
      timeLimitMs: limitMs,
      signal: own.signal,
      onProgress: (best) => {
        if (running.current === own) take((now) => withSolved(now, { problem, best, isEnd: false }))
      },
    })
      .then((end) => {
        if (running.current !== own) return
        const best = end.kind === 'impossible' ? null : end.best
        take((now) => withSolved(now, { problem, best, isEnd: true }))
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

  const isSettled = draft.made?.isSettled ?? true
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
    hold: useCallback(
      (shown) =>
        take((now) => {
          const own = planOfDraft(now)
          return own && isSamePlan(own, shown) ? withShown(now) : now
        }),
      [take],
    ),
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
  'The search for a fairer plan failed on this device. The plan below keeps every rule all the same.'
