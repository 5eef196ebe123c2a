'use client'

import { useCallback, useEffect, useMemo, useRef } from 'react'
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
import type { SearchClock } from '#ui/planning/running-search'
import { type RunSearch, useSearch } from '#ui/planning/use-search'
import { useSteps } from '#ui/planning/use-steps'

export type PlanEditing = {
  readonly draft: PlanDraft
  /** Null: none is running. */
  readonly search: SearchClock | null
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

/** How long the exact solver waits for the next change before it begins. */
const pauseMs = 500

/**
 * A plan being made: every change of what is asked has its plan at once, and the exact solver betters it by itself. What
 * the coach's hand changed stays until it asks for a new search.
 */
export function usePlanDraft(first: () => PlanDraft, solver: PlanSolver): PlanEditing {
  const { draft, change, take, undo, canUndo } = useSteps(first)
  const problem = draft.made?.problem ?? null
  const plan = useRef(draft.made?.plan ?? null)
  useEffect(() => {
    plan.current = draft.made?.plan ?? null
  })
  const run = useMemo((): RunSearch | null => {
    if (!problem) return null
    return async ({ timeLimitMs, signal, isWanted }) => {
      const start = plan.current
      if (!start) return 'done'
      const end = await solver(problem, {
        start,
        timeLimitMs,
        signal,
        onProgress: (best) => {
          if (isWanted()) take((now) => withSolved(now, { problem, best, isEnd: false }))
        },
      })
      if (!isWanted()) return 'done'
      const best = end.kind === 'impossible' ? null : end.best
      take((now) => withSolved(now, { problem, best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    }
  }, [problem, solver, take])
  const isSettled = draft.made?.isSettled ?? true
  const { search, hasFailed, searchNow, stop, forget } = useSearch(run, { isSettled, pauseMs })
  const settle = useCallback(() => {
    forget()
    take((now) => (now.made ? { ...now, made: { ...now.made, isSettled: true } } : now))
  }, [forget, take])

  return {
    ...{ draft, search, searchNow, stop, settle, undo, canUndo },
    fault: hasFailed ? noSearch : null,
    ask: useCallback((to) => change((now) => draftOf(to(now.request))), [change]),
    swap: useCallback((swap) => change((now) => withSwap(now, swap)), [change]),
    lock: useCallback((at) => change((now) => withLock(now, at)), [change]),
    unlock: useCallback((at) => change((now) => withoutLock(now, at)), [change]),
    hold: useCallback(
      (shown) =>
        take((now) => {
          const own = planOfDraft(now)
          return own && isSamePlan(own, shown) ? withShown(now) : now
        }),
      [take],
    ),
  }
}

const noSearch =
  'The search for a fairer plan failed on this device. The plan below keeps every rule all the same.'
