'use client'

import { useCallback } from 'react'
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
import type { RotationProblem } from '#rotation/problem'
import { type DraftEditing, type DraftSearch, useSearchedDraft } from '#ui/planning/use-searched-draft'

export type PlanEditing = DraftEditing<PlanDraft> & {
  readonly ask: (change: (request: PlanRequest) => PlanRequest) => void
  readonly swap: (swap: Swap) => void
  readonly lock: (at: { readonly turn: number; readonly player: number }) => void
  readonly unlock: (at: { readonly turn: number; readonly player: number }) => void
  /** The plan was saved: what it shows to somebody early is held, where the draft is that plan still. */
  readonly hold: (shown: PracticePlan) => void
}

/**
 * A plan being made: every change of what is asked has its plan at once, and the exact solver betters it by itself. What
 * the coach's hand changed stays until it asks for a new search.
 */
export function usePlanDraft(first: () => PlanDraft, solver: PlanSolver): PlanEditing {
  const solve: PlanDraftSearch['solve'] = useCallback(
    async (problem, { draft: { made }, timeLimitMs, signal, take }) => {
      if (!made) return 'done'
      const end = await solver(problem, {
        ...{ start: made.plan, timeLimitMs, signal },
        onProgress: (best) => take((now) => withSolved(now, { problem, best, isEnd: false })),
      })
      const best = end.kind === 'impossible' ? null : end.best
      take((now) => withSolved(now, { problem, best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    },
    [solver],
  )
  const { editing, change, take } = useSearchedDraft(first, { ...search, solve })
  return {
    ...editing,
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

type PlanDraftSearch = DraftSearch<PlanDraft, RotationProblem>

const search: Omit<PlanDraftSearch, 'solve'> = {
  problemOf: ({ made }) => made?.problem ?? null,
  isSettled: ({ made }) => made?.isSettled ?? true,
  settled: (draft) => (draft.made ? { ...draft, made: { ...draft.made, isSettled: true } } : draft),
  pauseMs: 500,
  failed: 'The search for a fairer plan failed on this device. The plan below keeps every rule all the same.',
}
