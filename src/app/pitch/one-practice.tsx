'use client'

import { useCallback, useEffect, useMemo, useRef, useState } from 'react'
import { v7 as uuidv7 } from 'uuid'
import { deviceId, forgetOld, keepSetting, keepTapped, readSetting } from '#app/pitch/pitch-store'
import { useKeptPractice } from '#app/pitch/use-kept-practice'
import { useOfflinePages } from '#app/pitch/use-offline-pages'
import { usePitchClock } from '#app/pitch/use-pitch-clock'
import { useRotation } from '#app/pitch/use-rotation'
import { useSending } from '#app/pitch/use-sending'
import { marksInBook } from '#pitch/marked-in-book'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import { NoPractice } from '#ui/pitch/no-practice'
import { PitchScreens } from '#ui/pitch/pitch-screens'
import { firstSettings, type PitchSettings } from '#ui/pitch/pitch-settings'
import { RotationNotice, RotationProof } from '#ui/pitch/rotation-notice'

const noEvents: readonly PitchEvent[] = []

/** One practice on this phone: what it has, what is tapped, and the exchange with the book. */
export function OnePractice({ sessionId }: { readonly sessionId: string }) {
  const kept = useKeptPractice(sessionId)
  const clock = usePitchClock()
  const { signal, soon } = useSending(sessionId, clock.hear)
  const pages = useOfflinePages()
  const [settings, setSettings] = useSettings()
  const found = kept === 'notKept' ? null : kept
  const pack = found?.practice?.pack ?? null
  const [unkept, setUnkept] = useState(noEvents)
  const events = useMemo(
    // What the book refused counts on no phone, so that all show the same.
    () => [...(found?.events ?? []).filter((event) => event.state !== 'refused'), ...unkept],
    [found?.events, unkept],
  )
  const roster = pack?.players
  const plan = pack?.plan ?? null
  const marks = useMemo(() => marksInBook(pack?.register ?? []), [pack?.register])
  const fold = useCallback(
    (all: readonly PitchEvent[]) => foldPitch(plan, roster ?? [], all, marks),
    [plan, roster, marks],
  )
  const state = useMemo(() => fold(events), [fold, events])
  const { news, follow, improve } = useRotation(pack, settings.isBallByBall)
  /** The state as of the last tap, before the phone has shown it. */
  const latest = useRef({ events, state })
  useEffect(() => {
    latest.current = { events, state }
    clock.see(events)
  }, [events, state, clock])

  const isHere = pack !== null
  useEffect(() => {
    // Where space runs short the browser would rather throw away what nobody asked it to keep.
    if (isHere) void navigator.storage?.persist?.().catch(() => false)
    if (isHere) void forgetOld(Date.now(), sessionId).catch(() => undefined)
  }, [isHere, sessionId])

  const tap = useCallback(
    async (make: (before: PitchState) => readonly Deed[]) => {
      const device = await deviceId().catch(() => uuidv7())
      const deeds = make(latest.current.state)
      const made = deeds.map(
        (deed): PitchEvent => ({ id: uuidv7(), deviceId: device, at: clock.stamp(), deed }),
      )
      const all = [...latest.current.events, ...made]
      latest.current = { events: all, state: fold(all) }
      try {
        await keepTapped(sessionId, made)
        soon()
      } catch {
        setUnkept((before) => [...before, ...made])
      }
    },
    [clock, fold, sessionId, soon],
  )
  const current = useCallback(() => latest.current.state, [])
  const lookFurther = useCallback(
    () => improve(current, (deeds) => void tap(() => deeds)),
    [improve, current, tap],
  )

  if (kept === null) return null
  if (!pack || !found?.practice)
    return <NoPractice signal={kept === 'notKept' ? { kind: 'notKept' } : signal} />

  const after = (deeds: readonly Deed[]) => {
    const at = clock.now()
    const more = deeds.map((deed): PitchEvent => ({ id: uuidv7(), deviceId: '', at, deed }))
    return fold([...latest.current.events, ...more])
  }
  const onDeeds = (deeds: readonly Deed[]) => {
    void tap(() => withRotation(deeds, { state: latest.current.state, after, follow })).then(lookFurther)
  }
  const waiting = found.events.filter((event) => event.state === 'waiting').length
  const refused = found.events.filter((event) => event.state === 'refused')
  const here = state.players.filter((player) => player.state === 'here' && !player.isOut).length
  const planAnewNow = () => void tap((now) => follow(now, { isAsked: true })).then(lookFurther)
  const mayPlanAnew = pack.viewer.mayReplan && state.status === 'running' && needsPlanAnew(state)
  return (
    <PitchScreens
      pack={pack}
      state={state}
      events={events}
      pages={pages}
      now={clock.now}
      settings={settings}
      onSettings={setSettings}
      onDeeds={onDeeds}
      onGuest={(name) => onDeeds([{ kind: 'guest', playerId: uuidv7(), name }])}
      refusals={refused}
      saved={{
        tapped: found.events.length,
        waiting,
        refused: refused.length,
        sentAt: timeWords(found.practice.sentAt),
        signal: unkept.length > 0 ? { kind: 'notKept' } : signal,
      }}
      onPlanAnew={pack.viewer.mayReplan ? planAnewNow : null}
      proof={<RotationProof news={news} sentence={state.sentence} />}
      rotation={
        <RotationNotice
          news={news}
          neededFor={mayPlanAnew ? here : null}
          round={state.nextRound?.round ?? state.live?.round ?? null}
          onPlanAnew={planAnewNow}
          onShape={(round, stations) =>
            void tap((now) =>
              follow(now, { isAsked: true, chosen: new Map(news?.chosen ?? []).set(round, stations) }),
            ).then(lookFurther)
          }
        />
      }
    />
  )
}

type Following = {
  readonly state: PitchState
  readonly after: (deeds: readonly Deed[]) => PitchState
  readonly follow: (after: PitchState) => readonly Deed[]
}

/** Deeds that change who is here bring the new rotation with them; the beginning comes with it, since nothing is called before. */
function withRotation(deeds: readonly Deed[], { state, after, follow }: Following): readonly Deed[] {
  const begin = deeds.filter(({ kind }) => kind === 'begin')
  const before = deeds.filter(({ kind }) => kind !== 'begin')
  if (begin.length > 0) return [...before, ...follow(after(before)), ...begin]
  const isOfPlayers = deeds.some(({ kind }) => kind === 'register' || kind === 'guest')
  return isOfPlayers && state.status === 'running' ? [...deeds, ...follow(after(deeds))] : deeds
}

function timeWords(at: number | null): string | null {
  return at === null ? null : new Date(at).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })
}

function useSettings(): readonly [PitchSettings, (settings: PitchSettings) => void] {
  const [settings, setSettings] = useState(firstSettings)
  useEffect(() => {
    readSetting<PitchSettings>('screens').then(
      (kept) => kept && setSettings({ ...firstSettings, ...kept }),
      () => undefined,
    )
  }, [])
  const change = useCallback((next: PitchSettings) => {
    setSettings(next)
    // What cannot be kept is asked for again after a reload; no harm is done.
    keepSetting('screens', next).catch(() => undefined)
  }, [])
  return [settings, change]
}
