'use client'

import { type ReactNode, useState } from 'react'
import { allHere } from '#pitch/all-here'
import { notOutAfterAll } from '#pitch/not-out-after-all'
import type { PitchEvent } from '#pitch/pitch-event'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import type { PlayerId } from '#squad/player'
import { BeginButton } from '#ui/pitch/begin-button'
import { castOf } from '#ui/pitch/cast'
import { MoreScreen } from '#ui/pitch/more-screen'
import { NowScreen } from '#ui/pitch/now-screen'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchFooter, PitchMain } from '#ui/pitch/pitch-footer'
import { PitchFrame } from '#ui/pitch/pitch-frame'
import type { PitchSettings } from '#ui/pitch/pitch-settings'
import { type PitchTab, PitchTabs } from '#ui/pitch/pitch-tabs'
import { type Refusal, RefusalNotice } from '#ui/pitch/refusal-notice'
import { RegisterScreen } from '#ui/pitch/register-screen'
import { listedPlayers } from '#ui/pitch/register-words'
import { RunningClock } from '#ui/pitch/running-clock'
import type { OfflinePages, Saved } from '#ui/pitch/saved-line'
import { TotalsScreen } from '#ui/pitch/totals-screen'
import { UndoButton } from '#ui/pitch/undo-button'
import { useWakeLock } from '#ui/pitch/use-wake-lock'

export type PitchScreensProps = {
  readonly pack: Omit<PitchPack, 'events' | 'cursor'>
  readonly state: PitchState
  readonly events: readonly PitchEvent[]
  readonly saved: Saved
  readonly pages: OfflinePages
  /** Why the book did not take something that was tapped here. */
  readonly refusals: readonly Refusal[]
  /** The time, set right by the server's clock, in milliseconds. */
  readonly now: () => number
  readonly settings: PitchSettings
  readonly onSettings: (settings: PitchSettings) => void
  readonly onDeeds: OnDeeds
  readonly onGuest: (name: string) => void
  /** Makes a new rotation for who is here; null: this phone makes none. */
  readonly onPlanAnew: (() => void) | null
  /** That the plan does not fit who is here, and what was made smaller for it. */
  readonly rotation: ReactNode
  /** How fair the rotation is. */
  readonly proof: ReactNode
}

/** One practice at the pitch: who is here, who goes now, what everyone has had. */
export function PitchScreens(props: PitchScreensProps) {
  const { pack, state, events, now, settings, onDeeds } = props
  const isBegun = state.status !== 'notBegun'
  const [chosen, setChosen] = useState<PitchTab | null>(null)
  const tab = chosen ?? (isBegun ? 'now' : 'here')
  const cast = castOf(state.plan, state.players, state.turns)
  useWakeLock(state.status === 'running')
  const shared = { state, cast, now, onDeeds }
  const listed = listedPlayers(state, pack)
  const isHelper = pack.viewer.kind === 'helper'
  const { id: sessionId, squadId } = pack.session
  const undo = (
    <UndoButton
      undoable={state.undoable}
      redoable={state.redoable}
      events={events}
      cast={cast}
      onDeeds={onDeeds}
    />
  )
  const begin = (
    <BeginButton state={state} players={listed} onDeeds={onDeeds} onBegun={() => setChosen('now')} />
  )
  const notices = (
    <>
      <RefusalNotice refusals={props.refusals} cast={cast} />
      {props.rotation}
    </>
  )
  const tabs = <PitchTabs tab={tab} onTab={setChosen} />
  const setNotOut = (playerId: PlayerId) => onDeeds(notOutAfterAll(state.undoable, playerId))
  return (
    <PitchFrame
      session={pack.session}
      saved={props.saved}
      pages={props.pages}
      clock={isBegun ? <RunningClock state={state} now={now} label="Time of the practice" /> : null}
    >
      {tab === 'now' ? (
        <NowScreen
          {...shared}
          pack={pack}
          settings={settings}
          isAllSent={props.saved.waiting === 0}
          onNotOut={setNotOut}
          rotation={notices}
          proof={props.proof}
          onPlanAnew={props.onPlanAnew}
          undo={undo}
          begin={begin}
          tabs={tabs}
        />
      ) : (
        <>
          <PitchMain about={tab}>
            {tab === 'here' ? notices : null}
            {tab === 'here' ? (
              <RegisterScreen
                players={listed}
                isBegun={isBegun}
                onRegister={(playerId, is) => onDeeds([{ kind: 'register', playerId, state: is }])}
                onNotOut={setNotOut}
                onGuest={props.onGuest}
                onEveryone={(ids) => onDeeds(allHere(ids))}
              />
            ) : null}
            {tab === 'totals' ? <TotalsScreen {...shared} countsPoints={settings.countsPoints} /> : null}
            {tab === 'more' ? (
              <MoreScreen
                {...shared}
                sessionId={sessionId}
                squadId={squadId}
                isHelper={isHelper}
                settings={settings}
                onSettings={props.onSettings}
                refusals={props.refusals}
              />
            ) : null}
          </PitchMain>
          <PitchFooter undo={undo} tabs={tabs}>
            {tab === 'here' && !isBegun ? begin : null}
          </PitchFooter>
        </>
      )}
    </PitchFrame>
  )
}
