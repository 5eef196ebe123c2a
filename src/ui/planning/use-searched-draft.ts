'use client'

import { useCallback, useEffect, useMemo, useRef } from 'react'
import type { SearchClock } from '#ui/planning/running-search'
import type { RunSearch } from '#ui/planning/use-one-search'
import { useSearch } from '#ui/planning/use-search'
import { useSteps } from '#ui/planning/use-steps'

/** What is looked for beside a draft, and how. Each the same from one render to the next. */
export type DraftSearch<Draft, Problem> = {
  /** What a solver is asked, another one whenever something else is asked; null: there is nothing to look for. */
  readonly problemOf: (draft: Draft) => Problem | null
  readonly isSettled: (draft: Draft) => boolean
  readonly settled: (draft: Draft) => Draft
  readonly solve: (
    problem: Problem,
    watch: {
      /** The draft as it stands when the search begins. */
      readonly draft: Draft
      readonly timeLimitMs: number
      readonly signal: AbortSignal
      /** Takes what was found into the draft; nothing any more once another search, or none, is wanted. */
      readonly take: (to: (draft: Draft) => Draft) => void
    },
  ) => Promise<'done' | 'failed'>
  /** How long it waits for the next change before it begins. */
  readonly pauseMs: number
  /** Said where it failed. */
  readonly failed: string
}

export type DraftEditing<Draft> = {
  readonly draft: Draft
  /** Null: none is running. */
  readonly search: SearchClock | null
  /** What went wrong with the last search; null: nothing. */
  readonly fault: string | null
  readonly searchNow: () => void
  readonly stop: () => void
  /** Ends the search where it is and leaves the draft as it stands on the page: it is being saved. */
  readonly settle: () => void
  readonly undo: () => void
  readonly canUndo: boolean
}

/** A draft made step by step, which an exact solver betters by itself a moment after each change. */
export function useSearchedDraft<Draft, Problem>(
  first: () => Draft,
  { problemOf, isSettled, settled, solve, pauseMs, failed }: DraftSearch<Draft, Problem>,
) {
  const { draft, change, take, undo, canUndo } = useSteps(first)
  const problem = problemOf(draft)
  const shown = useRef(draft)
  useEffect(() => {
    shown.current = draft
  })
  const run = useMemo(
    (): RunSearch | null =>
      problem === null
        ? null
        : ({ isWanted, ...watch }) =>
            solve(problem, { ...watch, draft: shown.current, take: (to) => isWanted() && take(to) }),
    [problem, solve, take],
  )
  const { search, hasFailed, searchNow, stop, forget } = useSearch(run, {
    isSettled: problem === null || isSettled(draft),
    pauseMs,
  })
  const settle = useCallback(() => {
    forget()
    take(settled)
  }, [forget, take, settled])
  const editing: DraftEditing<Draft> = {
    ...{ draft, search, searchNow, stop, settle, undo, canUndo },
    fault: hasFailed ? failed : null,
  }
  return { editing, change, take }
}
