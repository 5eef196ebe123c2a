'use client'

import { useEffect, useMemo, useState } from 'react'
import type { PackOfMatch } from '#app/pitch/pitch-store'
import type { PlayerId } from '#squad/player'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchState } from '#touchline/match-state'
import { type PromiseFix, promiseFix, promiseWatch, type WatchedPromise } from '#touchline/promise-watch'

/** Long enough for the screen to show a tap first. */
const afterTapMs = 400

type Promises = {
  readonly watch: readonly WatchedPromise[]
  /** Of promises in danger, the change that keeps each; not there: none was found, or not yet. */
  readonly fixes: ReadonlyMap<PlayerId, PromiseFix>
  /** The same worked out anew for this very moment. */
  readonly fixNow: (playerId: PlayerId) => PromiseFix | null
}

const noFixes: ReadonlyMap<PlayerId, PromiseFix> = new Map()

/** Promises of least time as they stand, and what keeps those that the plan does not. */
export function usePromises(
  pack: PackOfMatch,
  state: MatchState,
  /** How it stands now, with these tapped. */
  after: (deeds: readonly MatchDeed[]) => MatchState,
): Promises {
  const watch = useMemo(() => promiseWatch(state, pack), [state, pack])
  const [fixes, setFixes] = useState(noFixes)
  const inDanger = watch.flatMap(({ playerId, how }) => (how === 'inDanger' ? [playerId] : []))
  const fixNow = (playerId: PlayerId) =>
    promiseFix(after([]), pack, { playerId, heard: (deed) => after([deed]) })
  // A search takes a moment: it is asked when another promise comes into danger, or something is tapped.
  const asked =
    pack.viewer.mayReplan && inDanger.length > 0 ? `${inDanger.join()} ${state.undoable.length}` : ''
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked says when it has to be asked anew
  useEffect(() => {
    if (asked === '') {
      setFixes(noFixes)
      return
    }
    const timer = setTimeout(() => {
      const found = inDanger.map((playerId) => [playerId, fixNow(playerId)] as const)
      setFixes(new Map(found.flatMap(([id, fix]) => (fix ? [[id, fix] as const] : []))))
    }, afterTapMs)
    return () => clearTimeout(timer)
  }, [asked])
  return { watch, fixes, fixNow }
}
