'use client'

import { useCallback, useEffect, useRef, useState } from 'react'
import { proofOf } from '#common/proof'
import { calledTurns, firstUncalled } from '#pitch/called-turns'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import type { Deed } from '#pitch/pitch-event'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { type Anew, type ChosenShapes, planAnew } from '#pitch/plan-anew'
import { replanDeed } from '#pitch/replan-deed'
import { sayProof } from '#planning/plan-proof'
import { type ProvenWithin, provenWithin } from '#planning/proven-within'
import { keepAreas } from '#rotation/keep-areas'
import { planValues } from '#rotation/plan-values'
import type { RotationProblem } from '#rotation/problem'
import { type Replanned, usualTries } from '#rotation/replan'
import { broughtBack, isWorthChanging } from '#rotation/replan-tail'
import { tailProblem, withTail } from '#rotation/tail-problem'
import { prepareRotationWorker, solveInWorker } from '#solver/rotation-in-worker'
import type { RotationNews, RoundShapes } from '#ui/pitch/rotation-notice'

const searchMs = 10_000

type Planning = {
  readonly news: RotationNews | null
  /** What to say to all phones after these deeds, so that the plan fits who is here; empty where it does. */
  readonly follow: (
    after: PitchState,
    how?: { readonly isAsked?: boolean; readonly chosen?: ChosenShapes },
  ) => readonly Deed[]
  /** Looks for the fairest rotation of what `follow` planned last, beside the page. */
  readonly improve: (current: () => PitchState, onBetter: (deeds: readonly Deed[]) => void) => void
  readonly dismiss: () => void
}

/**
 * New rotations at the pitch: one at once, then, from a worker, the fairest there is, with its proof. What is called by
 * then stays.
 */
export function useRotation(
  pack: Omit<PitchPack, 'events' | 'cursor'> | null,
  isBallByBall: boolean,
): Planning {
  const [news, setNews] = useState<RotationNews | null>(null)
  const last = useRef<{ anew: Anew; made: Replanned } | null>(null)
  const search = useRef<AbortController | null>(null)
  const mayReplan = (pack?.viewer.mayReplan ?? false) && pack?.plan !== null
  useEffect(() => {
    if (mayReplan) prepareRotationWorker()
    return () => search.current?.abort()
  }, [mayReplan])

  const follow = useCallback<Planning['follow']>(
    (after, { isAsked = false, chosen } = {}) => {
      const { plan } = after
      if (!pack?.viewer.mayReplan || !plan || !(isAsked || needsPlanAnew(after))) return []
      search.current?.abort()
      const called = calledTurns(after, isBallByBall)
      const anew = planAnew({
        state: { ...after, plan },
        known: pack.players,
        called,
        chosen,
        tries: usualTries,
      })
      const { outcome } = anew
      const made = outcome.kind === 'planned' ? outcome : outcome.smaller
      last.current = made && { anew, made }
      const notKept = pack.players.flatMap(({ id, name }) => (anew.notKept.includes(id) ? [name] : []))
      setNews((before) => newsOf(anew, { made, chosen, before, turns: after.turns, notKept }))
      if (!made) return []
      const sentence = `New rotation for ${countHere(after)}.`
      return [replanDeed(anew.request, made, { fromTurn: anew.fromTurn, sentence })]
    },
    [pack, isBallByBall],
  )

  const improve = useCallback<Planning['improve']>(
    (current, onBetter) => {
      const planned = last.current
      if (!planned) return
      last.current = null
      const { anew, made } = planned
      const free = Math.max(anew.firstFree, firstUncalled(current(), isBallByBall))
      const tail = tailProblem({ ...made.problem, restLimit: made.restLimitUsed }, made.plan, free)
      if (tail.turns.length === 0) return
      const abort = new AbortController()
      search.current = abort
      setNews((now) => now && { ...now, isSearching: true })
      const standing = made.plan.slice(free)
      const settings = { seed: 1, timeLimitMs: searchMs, workLimit: null, start: standing }
      void solveInWorker(tail, settings, { signal: abort.signal }).then((found) => {
        if (search.current !== abort) return
        search.current = null
        const rotation = found.kind === 'impossible' ? null : found.rotation
        if (!rotation || abort.signal.aborted) return setNews((now) => now && { ...now, isSearching: false })
        const before = planValues(tail, standing).unfairness
        const players = tail.players.filter(({ present }) => present.some((isThere) => isThere)).length
        // Names that were read out already do not change for a hair.
        const isBetter = isWorthChanging(before, rotation.unfairness.value)
        // What is said is true of the plan that is played then.
        const kept = proofOf(isBetter ? rotation.unfairness.value : before, rotation.unfairness.bound)
        const sentence =
          isBetter || kept.bound > kept.value / 2
            ? sayProof({ ...kept, players, within: withinOfTail(anew, tail, free) })
            : null
        setNews((now) => now && { ...now, isSearching: false, proof: sentence })
        // Called meanwhile: the plan that was made at once stays.
        if (!isBetter || sentence === null || firstUncalled(current(), isBallByBall) > free) return
        const restLimit = rotation.restLimit.used
        const closest = broughtBack(tail, rotation.plan, { old: standing, restLimit })
        const whole = keepAreas(made.problem, withTail(made.plan, free, closest), free)
        const better = { problem: made.problem, plan: whole }
        onBetter([replanDeed(anew.request, better, { fromTurn: free, sentence })])
      })
    },
    [isBallByBall],
  )
  return { news, follow, improve, dismiss: useCallback(() => setNews(null), []) }
}

function countHere({ players }: PitchState): number {
  return players.filter(({ state, isOut }) => state === 'here' && !isOut).length
}

function newsOf(
  { outcome }: Anew,
  of: {
    readonly made: Replanned | null
    readonly chosen: ChosenShapes | undefined
    readonly before: RotationNews | null
    readonly turns: PitchState['turns']
    readonly notKept: readonly string[]
  },
): RotationNews {
  const shrink = outcome.kind === 'planned' ? [] : outcome.shrink
  const byRound = new Map<number, RoundShapes>()
  for (const { turns, proposals } of shrink) {
    // The halves of a free game are rounds of their own to the engine; to the coach they are one.
    const round = of.turns[turns[0] ?? 0]?.round ?? 0
    if (!byRound.has(round))
      byRound.set(round, {
        round,
        proposals: proposals.map(({ sentence, stations }) => ({ sentence, stations })),
      })
  }
  const shapes = [...byRound.values()]
  // Where one of the shapes was chosen, the others can still be.
  const kept = of.chosen ? (of.before?.shapes ?? []).filter(({ round }) => of.chosen?.has(round)) : []
  return {
    isMade: of.made !== null,
    shapes: [...kept, ...shapes.filter(({ round }) => !kept.some((one) => one.round === round))],
    chosen: of.chosen ?? new Map(),
    isSearching: false,
    proof: null,
    notKept: of.notKept,
  }
}

/** What a proof of the rest takes as given: of the places that are fixed in it only the coach's own are held fast. */
function withinOfTail({ request }: Anew, tail: RotationProblem, from: number): ProvenWithin {
  return { ...provenWithin(tail), heldFast: request.locks.some(({ turn }) => turn > from) }
}
