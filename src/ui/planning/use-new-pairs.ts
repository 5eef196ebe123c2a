'use client'

import { useEffect, useRef } from 'react'
import { withApart } from '#planning/player-pair'
import type { PlayerId } from '#squad/player'
import type { PlanningPair } from '#ui/planning/planning-types'

type Two = readonly [PlayerId, PlayerId]
type WithPairs = {
  readonly apart: readonly Two[]
  readonly mayMeet?: readonly Two[]
  readonly together: readonly Two[]
}

/** A pair noted on a page of planning goes into what is asked at once. */
export function useNewPairs<Asked extends WithPairs>(
  pairs: readonly PlanningPair[],
  onAsk: (change: (asked: Asked) => Asked) => void,
): void {
  const known = useRef(new Set(pairs.map(({ id }) => id)))
  useEffect(() => {
    const added = pairs.filter(({ id }) => !known.current.has(id))
    known.current = new Set(pairs.map(({ id }) => id))
    if (added.length === 0) return
    const of = (kind: PlanningPair['kind']) =>
      added.filter((pair) => pair.kind === kind).map(({ playerIds }) => playerIds)
    onAsk((now) => {
      const next = of('apart').reduce((asked, pair) => withApart(asked, pair, true), now)
      return { ...next, together: [...next.together, ...of('together')] }
    })
  })
}
