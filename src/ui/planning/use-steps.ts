'use client'

import { useCallback, useState } from 'react'

const mostSteps = 60

export type Steps<Draft> = {
  readonly draft: Draft
  /** A step of the coach's, to be undone; the same draft again is none. */
  readonly change: (to: (draft: Draft) => Draft) => void
  /** What a search finds is no step of the coach's, and is not undone by itself. */
  readonly take: (to: (draft: Draft) => Draft) => void
  readonly undo: () => void
  readonly canUndo: boolean
}

/** Something that is being made step by step, and the way back. */
export function useSteps<Draft>(first: () => Draft): Steps<Draft> {
  const [{ draft, past }, setState] = useState(() => ({ draft: first(), past: [] as readonly Draft[] }))
  return {
    draft,
    change: useCallback((to) => {
      setState((state) => {
        const next = to(state.draft)
        return next === state.draft
          ? state
          : { draft: next, past: [...state.past.slice(-mostSteps), state.draft] }
      })
    }, []),
    take: useCallback((to) => setState((state) => ({ ...state, draft: to(state.draft) })), []),
    undo: useCallback(
      () => setState((state) => ({ draft: state.past.at(-1) ?? state.draft, past: state.past.slice(0, -1) })),
      [],
    ),
    canUndo: past.length > 0,
  }
}
