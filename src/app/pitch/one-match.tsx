'use client'

import { useCallback, useEffect, useState } from 'react'
import { v7 as uuidv7 } from 'uuid'
import type { PackOfMatch } from '#app/pitch/pitch-store'
import type { SessionOnPhone } from '#app/pitch/use-session-on-phone'
import { useTaps } from '#app/pitch/use-taps'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { MatchScreens, type MatchScreensProps } from '#ui/touchline/match-screens'

type OneMatchProps = { readonly pack: PackOfMatch; readonly phone: SessionOnPhone }

/** One match on this phone: what it comes to at every second, and what is tapped. */
export function OneMatch({ pack, phone }: OneMatchProps) {
  const { clock } = phone
  const at = useTheTime(clock.now)
  const fold = useCallback((events: readonly MatchEvent[]) => foldMatch(pack, events, at), [pack, at])
  const { events, state, tap } = useTaps<MatchDeed, MatchState>(phone, fold)
  const onDeeds = (deeds: readonly MatchDeed[]) => void tap(() => deeds)
  return (
    <MatchScreens
      pack={pack}
      state={state}
      events={events}
      pages={phone.pages}
      saved={phone.saved}
      refusals={phone.refused as MatchScreensProps['refusals']}
      now={clock.now}
      onDeeds={onDeeds}
      onGuest={(name) => onDeeds([{ kind: 'guest', playerId: uuidv7(), name }])}
      notices={null}
      minutes={[]}
    />
  )
}

const everyMs = 1000

/** The time, told anew every second: what is planned counts as made when its time comes. */
function useTheTime(now: () => number): number {
  const [at, setAt] = useState(now)
  useEffect(() => {
    const timer = setInterval(() => setAt(now()), everyMs)
    return () => clearInterval(timer)
  }, [now])
  return at
}
