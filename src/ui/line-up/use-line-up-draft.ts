'use client'

import { useCallback, useEffect, useRef } from 'react'
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
import type { SearchClock } from '#ui/planning/running-search'
import { type RunSearch, useSearch } from '#ui/planning/use-search'
import { useSteps } from '#ui/planning/use-steps'

type Place = { readonly player: number; readonly window: number }

export type LineUpEditing = {
  readonly draft: LineUpDraft
  /** Null: none is running. */
  readonly search: SearchClock | null
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

/** How long the exact solver waits for the next change before it begins. */
const pauseMs = 400

/**
 * A line-up being made: every change of what is asked has its line-up at once, and the exact solver betters it by itself.
 * What the coach's hand changed stays until it asks for a new search.
 */
export function useLineUpDraft(first: () => LineUpDraft, solver: LineUpSolver): LineUpEditing {
  const { draft, change, take, undo, canUndo } = useSteps(first)
  const { problem, isSettled } = draft
  const shown = useRef(draft)
  useEffect(() => {
    shown.current = draft
  })
  const run: RunSearch = useCallback(
    async ({ timeLimitMs, signal, isWanted }) => {
      const end = await solver(problem, {
        start: shown.current.problem === problem ? (shown.current.made?.plan ?? null) : null,
        timeLimitMs,
        signal,
        onBetter: (best) => {
          if (isWanted()) take((now) => withSolved(now, { problem, best, isEnd: false }))
        },
      })
      if (!isWanted()) return 'done'
      if (end.kind === 'impossible') take((now) => withClash(now, { problem, clash: end.clash }))
      else take((now) => withSolved(now, { problem, best: end.best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    },
    [problem, solver, take],
  )
  const { search, hasFailed, searchNow, stop, forget } = useSearch(run, { isSettled, pauseMs })
  const settle = useCallback(() => {
    forget()
    take((now) => ({ ...now, isSettled: true }))
  }, [forget, take])

  return {
    ...{ draft, search, searchNow, stop, settle, undo, canUndo },
    fault: hasFailed ? noSearch : null,
    ask: useCallback((to) => change((now) => draftOf(to(now.request))), [change]),
    swap: useCallback((swap) => change((now) => withSwap(now, swap)), [change]),
    lock: useCallback((at) => change((now) => withLock(now, at)), [change]),
    unlock: useCallback((at) => change((now) => withoutLock(now, at)), [change]),
  }
}

const noSearch =
  'The search for a fairer line-up failed on this device. The one on the page keeps every rule all the same.'
