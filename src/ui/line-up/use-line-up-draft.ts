'use client'

import { useCallback } from 'react'
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
import type { LineUpProblem } from '#lineup/problem'
import { type DraftEditing, type DraftSearch, useSearchedDraft } from '#ui/planning/use-searched-draft'

type Place = { readonly player: number; readonly window: number }

export type LineUpEditing = DraftEditing<LineUpDraft> & {
  readonly ask: (change: (request: MatchPlanRequest) => MatchPlanRequest) => void
  readonly swap: (swap: LineUpSwap) => void
  readonly lock: (at: Place) => void
  readonly unlock: (at: Place) => void
}

/**
 * A line-up being made: every change of what is asked has its line-up at once, and the exact solver betters it by itself.
 * What the coach's hand changed stays until it asks for a new search.
 */
export function useLineUpDraft(first: () => LineUpDraft, solver: LineUpSolver): LineUpEditing {
  const solve: LineUpDraftSearch['solve'] = useCallback(
    async (problem, { draft, timeLimitMs, signal, take }) => {
      const start = draft.problem === problem ? (draft.made?.plan ?? null) : null
      const end = await solver(problem, {
        ...{ start, timeLimitMs, signal },
        onBetter: (best) => take((now) => withSolved(now, { problem, best, isEnd: false })),
      })
      if (end.kind === 'impossible') take((now) => withClash(now, { problem, clash: end.clash }))
      else take((now) => withSolved(now, { problem, best: end.best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    },
    [solver],
  )
  const { editing, change } = useSearchedDraft(first, { ...search, solve })
  return {
    ...editing,
    ask: useCallback((to) => change((now) => draftOf(to(now.request))), [change]),
    swap: useCallback((swap) => change((now) => withSwap(now, swap)), [change]),
    lock: useCallback((at) => change((now) => withLock(now, at)), [change]),
    unlock: useCallback((at) => change((now) => withoutLock(now, at)), [change]),
  }
}

type LineUpDraftSearch = DraftSearch<LineUpDraft, LineUpProblem>

const search: Omit<LineUpDraftSearch, 'solve'> = {
  problemOf: ({ problem }) => problem,
  isSettled: ({ isSettled }) => isSettled,
  settled: (draft) => ({ ...draft, isSettled: true }),
  pauseMs: 400,
  failed:
    'The search for a fairer line-up failed on this device. The one on the page keeps every rule all the same.',
}
