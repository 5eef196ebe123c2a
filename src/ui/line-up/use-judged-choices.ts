'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import type { LineUpChoice } from '#lineup/draft/line-up-choice'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import { findLineUpClash } from '#lineup/find-line-up-clash'
import type { LineUp } from '#lineup/line-up'
import type { LineUpProblem } from '#lineup/problem'
import { problemOfMatch } from '#lineup/problem-of-match'

/** What a choice comes to; null: no line-up for it. */
export type JudgedChoice = { readonly problem: LineUpProblem; readonly lineUp: LineUp } | null

export type JudgedChoices = {
  readonly judged: ReadonlyMap<string, JudgedChoice>
  readonly isRunning: boolean
  readonly start: () => void
  readonly stop: () => void
}

/** How long the exact solver may look at one choice. */
const limitMs = 3_000

/** Solves what could be asked instead, one after another, beside the page. What was judged of other choices counts no more. */
export function useJudgedChoices(choices: readonly LineUpChoice[], solver: LineUpSolver): JudgedChoices {
  const [state, setState] = useState<{
    readonly choices: readonly LineUpChoice[]
    readonly judged: ReadonlyMap<string, JudgedChoice>
    readonly isRunning: boolean
  } | null>(null)
  const running = useRef<AbortController | null>(null)
  const own = state?.choices === choices ? state : null
  const start = useCallback(() => {
    running.current?.abort()
    const control = new AbortController()
    running.current = control
    setState({ choices, judged: new Map(), isRunning: true })
    const change = (to: (judged: ReadonlyMap<string, JudgedChoice>) => ReadonlyMap<string, JudgedChoice>) =>
      setState((now) => (now?.choices === choices ? { ...now, judged: to(now.judged) } : now))
    const judgeAll = async () => {
      for (const choice of choices) {
        if (control.signal.aborted) return
        const found = await judge(choice, solver, control.signal).catch(() => null)
        if (!control.signal.aborted) change((judged) => new Map([...judged, [choice.key, found]]))
      }
    }
    void judgeAll().finally(() =>
      setState((now) => (now?.choices === choices ? { ...now, isRunning: false } : now)),
    )
  }, [choices, solver])
  // Of other choices nothing is wanted any more, nor after the page is left.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of choices that counts
  useEffect(() => () => running.current?.abort(), [choices])
  return {
    judged: own?.judged ?? new Map(),
    isRunning: own?.isRunning ?? false,
    start,
    stop: useCallback(() => running.current?.abort(), []),
  }
}

async function judge(choice: LineUpChoice, solver: LineUpSolver, signal: AbortSignal): Promise<JudgedChoice> {
  const problem = problemOfMatch(choice.request)
  if (findLineUpClash(problem).length > 0) return null
  const end = await solver(problem, { start: null, timeLimitMs: limitMs, signal })
  return end.kind === 'impossible' || !end.best ? null : { problem, lineUp: end.best }
}
