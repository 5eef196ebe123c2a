'use client'

import type { ComponentProps } from 'react'
import type { AheadEngine } from '#ahead/draft/ahead-engine'
import { aheadAlternativesInWorker, reachableInWorker, solveAheadInWorker } from '#solver/ahead-in-worker'
import { AheadForm } from '#ui/ahead/ahead-form'

const settingsOf = (timeLimitMs: number) => ({ seed: 1, timeLimitMs, workLimit: null })

/** The exact solver of this page: in workers, so that the page stays free. */
const engine: AheadEngine = {
  // Called so that the solver's own third argument stays its own.
  solve: (problem, watch) => solveAheadInWorker(problem, watch),
  others: (problem, { solved, practice, timeLimitMs, signal }) =>
    aheadAlternativesInWorker(problem, { settings: settingsOf(timeLimitMs), solved, practice, signal }),
  reach: async (problem, { start, timeLimitMs, signal }) => {
    const ends = await reachableInWorker(problem, { settings: { ...settingsOf(timeLimitMs), start }, signal })
    return ends?.players ?? null
  },
}

/** The page of the weeks ahead with its solver. */
export function AheadPlanner(props: Omit<ComponentProps<typeof AheadForm>, 'engine'>) {
  return <AheadForm {...props} engine={engine} />
}
