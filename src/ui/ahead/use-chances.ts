'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import type { Chances } from '#ahead/chance/chances'
import { chancesInSlices } from '#ahead/chance/chances-in-slices'
import { type HardestToLose, hardestInSlices } from '#ahead/chance/hardest-in-slices'
import type { AheadPlan } from '#ahead/plan'
import type { AheadProblem } from '#ahead/problem'
import { runSlices } from '#ui/ahead/run-slices'

export type ChancesFound = {
  /** The part of all that is worked out, 0-1; null: nothing is being worked out. */
  readonly part: number | null
  readonly chances: Chances | null
  readonly hardest: HardestToLose | null
  readonly start: () => void
  readonly stop: () => void
}

const seed = 1
/** With 1,000 draws a chance is known to three in a hundred. */
const draws = 1000
/** Each of these is played through again without every single practice. */
const drawsWithout = 300
/** Of the whole work, what the chances take. */
const chancesPart = 0.35
const pauseMs = 600

type Found = {
  readonly of: AheadPlan
  readonly chances: Chances | null
  readonly hardest: HardestToLose | null
}

/**
 * How likely everyone is to end inside, and what would be hardest to lose: worked out beside the page, a moment after the
 * plan has come to rest. What is known of another plan is not shown.
 */
export function useChances(
  problem: AheadProblem,
  plan: AheadPlan,
  { isResting }: { readonly isResting: boolean },
): ChancesFound {
  const [found, setFound] = useState<Found | null>(null)
  const [part, setPart] = useState<number | null>(null)
  const running = useRef<AbortController | null>(null)
  const stop = useCallback(() => {
    running.current?.abort()
    running.current = null
    setPart(null)
  }, [])
  const start = useCallback(() => {
    running.current?.abort()
    const own = new AbortController()
    running.current = own
    setPart(0)
    const watch = (from: number, to: number) => ({
      signal: own.signal,
      onPart: (done: number) => {
        if (running.current === own) setPart(from + done * (to - from))
      },
    })
    void (async () => {
      const chances = await runSlices(chancesInSlices(problem, plan, { seed, draws }), watch(0, chancesPart))
      if (!chances || running.current !== own) return
      setFound({ of: plan, chances, hardest: null })
      const hardest = await runSlices(
        hardestInSlices(problem, plan, { seed, draws: drawsWithout }),
        watch(chancesPart, 1),
      )
      if (!hardest || running.current !== own) return
      setFound({ of: plan, chances, hardest })
      stop()
    })()
  }, [problem, plan, stop])
  const isKnown = found?.of === plan && found.hardest !== null
  useEffect(() => {
    if (!isResting || isKnown) return
    const timer = setTimeout(start, pauseMs)
    return () => clearTimeout(timer)
  }, [isResting, isKnown, start])
  // What is worked out of another plan than the page shows is of no use any more.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is the change of the plan that counts
  useEffect(() => stop, [plan, stop])
  const shown = found?.of === plan ? found : null
  return { part, chances: shown?.chances ?? null, hardest: shown?.hardest ?? null, start, stop }
}
