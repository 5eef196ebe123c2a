'use client'

import { useCallback, useEffect, useMemo, useState } from 'react'
import { v7 as uuidv7 } from 'uuid'
import { keepSetting, type PracticePack, readSetting } from '#app/pitch/pitch-store'
import { useRotation } from '#app/pitch/use-rotation'
import type { SessionOnPhone } from '#app/pitch/use-session-on-phone'
import { useTaps } from '#app/pitch/use-taps'
import { marksInBook } from '#pitch/marked-in-book'
import { needsPlanAnew } from '#pitch/needs-plan-anew'
import type { Deed, PitchEvent } from '#pitch/pitch-event'
import { foldPitch, type PitchState } from '#pitch/pitch-state'
import { PitchScreens } from '#ui/pitch/pitch-screens'
import { firstSettings, type PitchSettings } from '#ui/pitch/pitch-settings'
import type { Refusal } from '#ui/pitch/refusal-notice'
import { RotationNotice, RotationProof } from '#ui/pitch/rotation-notice'

type OnePracticeProps = { readonly pack: PracticePack; readonly phone: SessionOnPhone }

/** One practice on this phone: what it comes to, and what is tapped. */
export function OnePractice({ pack, phone }: OnePracticeProps) {
  const { clock, pages } = phone
  const [settings, setSettings] = useSettings()
  const { players: roster, plan } = pack
  const marks = useMemo(() => marksInBook(pack.register), [pack.register])
  const fold = useCallback(
    (all: readonly PitchEvent[]) => foldPitch(plan, roster, all, marks),
    [plan, roster, marks],
  )
  const { events, state, current, tap } = useTaps<Deed, PitchState>(phone, fold)
  const { news, follow, improve } = useRotation(pack, settings.isBallByBall)
  const lookFurther = useCallback(
    () =>
      improve(
        () => current().state,
        (deeds) => void tap(() => deeds),
      ),
    [improve, current, tap],
  )

  const after = (deeds: readonly Deed[]) => {
    const at = clock.now()
    const more = deeds.map((deed): PitchEvent => ({ id: uuidv7(), deviceId: '', at, deed }))
    return fold([...current().events, ...more])
  }
  const onDeeds = (deeds: readonly Deed[]) => {
    void tap(() => withRotation(deeds, { state: current().state, after, follow })).then(lookFurther)
  }
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
      refusals={phone.refused as readonly Refusal[]}
      saved={phone.saved}
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
