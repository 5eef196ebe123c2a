'use client'

import type { ComponentProps } from 'react'
import type { LineUpEngine } from '#lineup/draft/line-up-solver'
import {
  lineUpTradeOffsInWorker,
  lineUpWaysOutInWorker,
  solveLineUpInWorker,
} from '#solver/line-up-in-worker'
import { LineUpForm } from '#ui/line-up/line-up-form'

const seed = 1
const settingsOf = (timeLimitMs: number) => ({ seed, timeLimitMs, workLimit: null })

/** The exact solver of this page: in workers, so that the page stays free. */
const engine: LineUpEngine = {
  solve: async (problem, { start, timeLimitMs, signal, onBetter }) => {
    const settings = { ...settingsOf(timeLimitMs), ...(start ? { start } : {}) }
    const end = await solveLineUpInWorker(problem, settings, {
      signal,
      ...(onBetter ? { onBetter: (best) => onBetter(best) } : {}),
    })
    return end.kind === 'impossible' ? end : { kind: end.kind, best: end.lineUp }
  },
  waysOut: async (problem, { missed, timeLimitMs, signal }) => {
    const ways = await lineUpWaysOutInWorker(problem, { settings: settingsOf(timeLimitMs), missed, signal })
    return ways.map(({ letGo }) => letGo)
  },
  tradeOffs: (problem, { lineUp, timeLimitMs, signal }) =>
    lineUpTradeOffsInWorker(problem, { settings: settingsOf(timeLimitMs), lineUp, signal }),
}

/** The page of a line-up with its solver. */
export function LineUpPlanner(props: Omit<ComponentProps<typeof LineUpForm>, 'engine'>) {
  return <LineUpForm {...props} engine={engine} />
}
