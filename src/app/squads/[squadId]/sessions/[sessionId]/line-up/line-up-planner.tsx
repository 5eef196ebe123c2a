'use client'

import type { ComponentProps } from 'react'
import type { LineUpSolver } from '#lineup/draft/line-up-solver'
import { solveLineUpInWorker } from '#solver/line-up-in-worker'
import { LineUpForm } from '#ui/line-up/line-up-form'

const seed = 1

/** The exact solver of this page: in a worker, so that the page stays free. */
const solver: LineUpSolver = async (problem, { start, timeLimitMs, signal, onBetter }) => {
  const settings = { seed, timeLimitMs, workLimit: null, ...(start ? { start } : {}) }
  const end = await solveLineUpInWorker(problem, settings, {
    signal,
    ...(onBetter ? { onBetter: (best) => onBetter(best) } : {}),
  })
  return end.kind === 'impossible' ? end : { kind: end.kind, best: end.lineUp }
}

/** The page of a line-up with its solver. */
export function LineUpPlanner(props: Omit<ComponentProps<typeof LineUpForm>, 'solver'>) {
  return <LineUpForm {...props} solver={solver} />
}
