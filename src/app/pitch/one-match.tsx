'use client'

import { useCallback, useEffect, useState } from 'react'
import { v7 as uuidv7 } from 'uuid'
import type { PackOfMatch } from '#app/pitch/pitch-store'
import { useMatchPlan } from '#app/pitch/use-match-plan'
import { usePromises } from '#app/pitch/use-promises'
import type { SessionOnPhone } from '#app/pitch/use-session-on-phone'
import { useTaps } from '#app/pitch/use-taps'
import { fitsFirstKickOff, isCastNew } from '#touchline/fits-plan'
import { foldMatch } from '#touchline/fold-match'
import type { MatchDeed } from '#touchline/match-deed'
import type { MatchEvent } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { MatchScreens, type MatchScreensProps } from '#ui/touchline/match-screens'
import { PlanNotes } from '#ui/touchline/plan-news'

type OneMatchProps = { readonly pack: PackOfMatch; readonly phone: SessionOnPhone }

/** One match on this phone: what it comes to at every second, and what is tapped. */
export function OneMatch({ pack, phone }: OneMatchProps) {
  const { clock } = phone
  const at = useTheTime(clock.now)
  const fold = useCallback((events: readonly MatchEvent[]) => foldMatch(pack, events, at), [pack, at])
  const { events, state, current, tap } = useTaps<MatchDeed, MatchState>(phone, fold)
  const { news, plan, improve, forget } = useMatchPlan(pack)
  const mayPlan = pack.viewer.mayReplan
  /** How it stands now, with these tapped. */
  const after = (deeds: readonly MatchDeed[]) => {
    const now = clock.now()
    const more = deeds.map(
      (deed, index): MatchEvent => ({ id: uuidv7(), deviceId: '', at: now + index, deed }),
    )
    return foldMatch(pack, [...current().events, ...more], now + deeds.length)
  }
  const lookFurther = () =>
    improve(
      () => foldMatch(pack, current().events, clock.now()),
      (deeds) => void tap(() => deeds),
    )
  const onDeeds = (deeds: readonly MatchDeed[]) => {
    // What was planned for the period before says nothing of this one; a new plan says its own.
    if (deeds.some(({ kind }) => kind === 'kickOff' || kind === 'fullTime')) forget()
    void tap(() =>
      mayPlan ? withPlan(deeds, { events: current().events, before: after([]), after, plan }) : deeds,
    ).then(lookFurther)
  }
  const planNow = () => void tap(() => plan(after([]))).then(lookFurther)
  const { watch, fixes, fixNow } = usePromises(pack, state, after)
  const isUnfit = mayPlan && state.status === 'notBegun' && isAnybodyHere(state) && !fitsFirstKickOff(state)
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
      onPlan={mayPlan ? planNow : null}
      watch={watch}
      fixes={fixes}
      onFix={(playerId) => {
        const fix = fixNow(playerId)
        if (fix) void tap(() => [fix.deed])
      }}
      notices={
        <PlanNotes
          news={news}
          needed={isUnfit ? 'The plan does not fit who is here so far.' : null}
          onPlan={planNow}
          onSeen={forget}
        />
      }
    />
  )
}

function isAnybodyHere({ players }: MatchState): boolean {
  return players.some(({ state, isAssumed }) => state === 'here' && !isAssumed)
}

type WithPlan = {
  readonly events: readonly MatchEvent[]
  readonly before: MatchState
  readonly after: (deeds: readonly MatchDeed[]) => MatchState
  readonly plan: (now: MatchState) => readonly MatchDeed[]
}

/** Deeds that change who can play bring the new plan with them; the first kick-off brings one where the plan does not fit. */
function withPlan(
  deeds: readonly MatchDeed[],
  { events, before, after, plan }: WithPlan,
): readonly MatchDeed[] {
  const kickOff = deeds.find((deed) => deed.kind === 'kickOff')
  if (kickOff) {
    const others = deeds.filter((deed) => deed !== kickOff)
    const there = after(others)
    if (before.status !== 'notBegun' || fitsFirstKickOff(there)) return deeds
    const made = plan(there)
    const on = after([...others, ...made]).nextKickOff?.on ?? kickOff.on
    return [...others, ...made, { ...kickOff, on }]
  }
  if (before.status !== 'running' && before.status !== 'atBreak') return deeds
  // Who takes a new plan back has the one before it.
  const taken = new Set(deeds.flatMap((deed) => (deed.kind === 'undo' ? [deed.undoes] : [])))
  if (events.some(({ id, deed }) => deed.kind === 'replan' && taken.has(id))) return deeds
  const there = after(deeds)
  return isCastNew(before, there) ? [...deeds, ...plan(there)] : deeds
}

const lookMs = 250

/** The time, told anew every second: what is planned counts as made when its time comes. */
function useTheTime(now: () => number): number {
  const [at, setAt] = useState(now)
  useEffect(() => {
    const look = () =>
      setAt((before) => (Math.floor(now() / 1000) === Math.floor(before / 1000) ? before : now()))
    const timer = setInterval(look, lookMs)
    document.addEventListener('visibilitychange', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
    }
  }, [now])
  return at
}
