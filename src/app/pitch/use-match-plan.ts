'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import type { PackOfMatch } from '#app/pitch/pitch-store'
import type { LineUp } from '#lineup/line-up'
import { lineUpValues } from '#lineup/line-up-values'
import { quickLineUp } from '#lineup/quick-line-up'
import { solveLineUpInWorker } from '#solver/line-up-in-worker'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchState } from '#touchline/match-state'
import { type MatchTail, problemOfRest } from '#touchline/match-tail'
import { replanDeed, replanMatch } from '#touchline/replan-match'
import { isWorthChanging } from '#touchline/worth-changing'
import type { PlanNews } from '#ui/touchline/plan-news'

const searchMs = 8_000
const seed = 1

export type MatchPlanning = {
  readonly news: PlanNews | null
  /** What to say to all phones, so that the plan fits who is here from now on; empty: nothing can be planned. */
  readonly plan: (now: MatchState) => readonly MatchDeed[]
  /** Looks beside the page for the fairest rest after what `plan` made last. */
  readonly improve: (current: () => MatchState, onBetter: (deeds: readonly MatchDeed[]) => void) => void
  readonly forget: () => void
}

/** The rest of a match planned anew: at once, then, from a worker, the fairest there is. What is called by then stays. */
export function useMatchPlan(pack: PackOfMatch): MatchPlanning {
  const [news, setNews] = useState<PlanNews | null>(null)
  const isNew = useRef(false)
  const search = useRef<AbortController | null>(null)
  useEffect(() => () => search.current?.abort(), [])

  const plan = useCallback(
    (now: MatchState) => {
      search.current?.abort()
      const made = replanMatch(now, pack, { seed })
      isNew.current = made.ok
      const kind = made.ok ? 'made' : (made.reasons[0] ?? 'noneFound')
      setNews({ kind, sentence: made.ok ? made.value.sentence : '', isSearching: false, proof: null })
      return made.ok ? [made.value] : []
    },
    [pack],
  )

  const improve = useCallback(
    (current: () => MatchState, onBetter: (deeds: readonly MatchDeed[]) => void) => {
      if (!isNew.current) return
      isNew.current = false
      const began = current()
      const tail = problemOfRest(began, pack)
      if (!tail) return
      const abort = new AbortController()
      search.current = abort
      setNews((now) => now && { ...now, isSearching: true })
      const settings = { seed, timeLimitMs: searchMs, workLimit: null }
      const found = solveLineUpInWorker(tail.problem, settings, { signal: abort.signal })
      const take = (found: Awaited<ReturnType<typeof solveLineUpInWorker>>) => {
        // Stopped by a newer plan: what was found is for who was there before it.
        if (search.current !== abort || abort.signal.aborted) return
        search.current = null
        const lineUp = found.kind === 'impossible' ? null : found.lineUp
        const better = lineUp && isBetter(tail, lineUp) && isAsBefore(began, current())
        const proof = lineUp && sayProven(lineUp, better !== false)
        setNews((now) => now && { ...now, isSearching: false, proof })
        if (lineUp && better) onBetter([replanDeed(began, tail, lineUp.plan)])
      }
      // Where no worker can be started the plan that stands is good enough.
      found.then(take).catch(() => setNews((now) => now && { ...now, isSearching: false }))
    },
    [pack],
  )
  return { news, plan, improve, forget: useCallback(() => setNews(null), []) }
}

function isBetter({ problem }: MatchTail, { plan }: LineUp): boolean {
  const standing = quickLineUp(problem, { seed })
  return !standing || isWorthChanging(lineUpValues(problem, standing), lineUpValues(problem, plan))
}

/** Nothing was called or made since: else names that were read out would change. */
function isAsBefore(began: MatchState, now: MatchState): boolean {
  const textOf = ({ on, call, status }: MatchState) => JSON.stringify([on, call?.due ?? null, status])
  return textOf(began) === textOf(now)
}

function sayProven({ proofs }: LineUp, isTaken: boolean): string | null {
  if (!proofs.promise.proven || !proofs.minutes.proven) return null
  return isTaken
    ? 'A fairer plan was found: no other shares the rest more evenly.'
    : 'Proven: no other plan shares the rest noticeably more evenly.'
}
