'use client'

import { useCallback } from 'react'
import { type AheadDraft, aheadDraft, withAheadClash, withBetter } from '#ahead/draft/ahead-draft'
import type { AheadSolver } from '#ahead/draft/ahead-solver'
import type { Hold } from '#ahead/draft/hold-practices'
import type { AheadChoices } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import type { AheadRequest } from '#ahead/request'
import { type DraftEditing, type DraftSearch, useSearchedDraft } from '#ui/planning/use-searched-draft'

export type AheadEditing = DraftEditing<AheadDraft> & {
  /** Plans anew what is asked now; what is firm stays, but for what `firm` leaves out. `choices`: the plan that is wanted. */
  readonly ask: (
    change: (request: AheadRequest) => AheadRequest,
    how?: {
      readonly firm?: (firm: ReadonlyMap<string, Hold>) => ReadonlyMap<string, Hold>
      readonly choices?: AheadChoices
    },
  ) => void
}

const seed = 1

/** The weeks ahead being planned: every change has its plan at once, and the exact solver betters it by itself. */
export function useAheadDraft(first: () => AheadDraft, solver: AheadSolver): AheadEditing {
  const solve: AheadDraftSearch['solve'] = useCallback(
    async (problem, { draft, timeLimitMs, signal, take }) => {
      const start = draft.problem === problem ? (draft.best?.plan ?? null) : null
      const end = await solver(problem, {
        ...{ start, seed, timeLimitMs, signal },
        onBetter: (best) => take((now) => withBetter(now, { problem, best, isEnd: false })),
      })
      if (end.kind === 'impossible') take((now) => withAheadClash(now, { problem, clash: end.clash }))
      else take((now) => withBetter(now, { problem, best: end.best, isEnd: true }))
      return end.kind === 'failed' ? 'failed' : 'done'
    },
    [solver],
  )
  const { editing, change } = useSearchedDraft(first, { ...search, solve })
  return {
    ...editing,
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

type AheadDraftSearch = DraftSearch<AheadDraft, AheadProblem>

const search: Omit<AheadDraftSearch, 'solve'> = {
  problemOf: ({ problem }) => (problem.practices.length > 0 ? problem : null),
  isSettled: ({ isSettled }) => isSettled,
  settled: (draft) => ({ ...draft, isSettled: true }),
  pauseMs: 400,
  failed:
    'The search for a better plan failed on this device. The one on the page keeps every rule all the same.',
}
