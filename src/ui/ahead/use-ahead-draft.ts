'use client'

import { useCallback, useEffect, useRef } from 'react'
import { type AheadDraft, aheadDraft, withAheadClash, withBetter } from '#ahead/draft/ahead-draft'
import type { AheadSolver } from '#ahead/draft/ahead-solver'
import type { Hold } from '#ahead/draft/hold-practices'
import type { AheadChoices } from '#ahead/plan'
import type { AheadRequest } from '#ahead/request'
import type { SearchClock } from '#ui/planning/running-search'
import { type RunSearch, useSearch } from '#ui/planning/use-search'
import { useSteps } from '#ui/planning/use-steps'

export type AheadEditing = {
  readonly draft: AheadDraft
  /** Null: none is running. */
  readonly search: SearchClock | null
  readonly fault: string | null
  /** Plans anew what is asked now; what is firm stays, but for what `firm` leaves out. `choices`: the plan that is wanted. */
  readonly ask: (
    change: (request: AheadRequest) => AheadRequest,
    how?: {
      readonly firm?: (firm: ReadonlyMap<string, Hold>) => ReadonlyMap<string, Hold>
      readonly choices?: AheadChoices
    },
  ) => void
  readonly searchNow: () => void
  readonly stop: () => void
  /** Ends the search where it is: what stands on the page is being saved. */
  readonly settle: () => void
  readonly undo: () => void
  readonly canUndo: boolean
}

const seed = 1
const pauseMs = 400

/** The weeks ahead being planned: every change has its plan at once, and the exact solver betters it by itself. */
export function useAheadDraft(first: () => AheadDraft, solver: AheadSolver): AheadEditing {
  const { draft, change, take, undo, canUndo } = useSteps(first)
  const { problem, isSettled } = draft
  const shown = useRef(draft)
  useEffect(() => {
    shown.current = draft
  })
  const run: RunSearch = useCallback(
    async ({ timeLimitMs, signal, isWanted }) => {
      const start = shown.current.problem === problem ? (shown.current.best?.plan ?? null) : null
      const end = await solver(problem, {
        ...{ start, seed, timeLimitMs, signal },
        onBetter: (best) => {
          if (isWanted()) take((now) => withBetter(now, { problem, best, isEnd: false }))
        },
      })
      if (!isWanted()) return 'done'
      if (end.kind === 'impossible') take((now) => withAheadClash(now, { problem, clash: end.clash }))
      else take((now) => withBetter(now, { problem, best: end.best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    },
    [problem, solver, take],
  )
  const isEmpty = problem.practices.length === 0
  const { search, hasFailed, searchNow, stop, forget } = useSearch(isEmpty ? null : run, {
    isSettled: isSettled || isEmpty,
    pauseMs,
  })
  const settle = useCallback(() => {
    forget()
    take((now) => ({ ...now, isSettled: true }))
  }, [forget, take])
  return {
    ...{ draft, search, searchNow, stop, settle, undo, canUndo },
    fault: hasFailed ? noSearch : null,
    ask: useCallback(
      (to, { firm, choices } = {}) =>
        change((now) =>
          aheadDraft(to(now.request), {
            firm: firm ? firm(now.firm) : now.firm,
            ...(choices ? { choices } : {}),
          }),
        ),
      [change],
    ),
  }
}

const noSearch =
  'The search for a better plan failed on this device. The one on the page keeps every rule all the same.'
