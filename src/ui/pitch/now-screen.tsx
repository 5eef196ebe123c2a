'use client'

import { type ReactNode, useState } from 'react'
import type { PitchPack } from '#pitch/pitch-pack'
import type { PitchState } from '#pitch/pitch-state'
import { runningTotals } from '#pitch/running-totals'
import { wasToLeave } from '#pitch/was-to-leave'
import type { PlayerId } from '#squad/player'
import { ActionBar, StopButton } from '#ui/pitch/action-bar'
import { LiveBall, NextBall } from '#ui/pitch/ball-screen'
import { type Cast, sideOfRole } from '#ui/pitch/cast'
import { sized } from '#ui/pitch/choice-size'
import { ChoiceTally } from '#ui/pitch/choice-tally'
import { EndingSheet } from '#ui/pitch/ending-sheet'
import { LeaverNotice } from '#ui/pitch/leaver-notice'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { OverScreen } from '#ui/pitch/over-screen'
import { PitchFooter, PitchMain } from '#ui/pitch/pitch-footer'
import type { PitchSettings } from '#ui/pitch/pitch-settings'
import { PlayerMoves } from '#ui/pitch/player-moves'
import { RoundScreen } from '#ui/pitch/round-screen'
import { WaitingList } from '#ui/pitch/waiting-list'

type NowScreenProps = {
  readonly pack: Omit<PitchPack, 'events' | 'cursor'>
  readonly state: PitchState
  readonly cast: Cast
  readonly now: () => number
  readonly settings: PitchSettings
  readonly isAllSent: boolean
  readonly onDeeds: OnDeeds
  readonly onNotOut: (playerId: PlayerId) => void
  /** Makes a new rotation for who is here; null: this phone makes none. */
  readonly onPlanAnew: (() => void) | null
  /** What has to be seen before the places. */
  readonly rotation: ReactNode
  /** How fair the rotation is. */
  readonly proof: ReactNode
  readonly undo: ReactNode
  /** Before the beginning: what begins it. */
  readonly begin: ReactNode
  readonly tabs: ReactNode
}

/** Who goes now. */
export function NowScreen(props: NowScreenProps) {
  const { pack, state, cast, now, settings, onDeeds, undo, tabs } = props
  const [openId, setOpenId] = useState<PlayerId | null>(null)
  /** The turn, by its start, whose ending is being asked for. */
  const [endedId, setEndedId] = useState<string | null>(null)
  const round = state.nextRound
  const chosen = state.choices.find(({ turn }) => turn === round?.turns[0].index)?.size ?? null
  const shape = chosen === null ? null : (round?.design?.choice?.sizes[chosen]?.shape ?? null)
  const places = round?.turns[0].stations ?? []
  const size = shape ? sized(places, shape, runningTotals(state, 0)) : { stations: places, stepsOff: [] }
  const roundCount = 1 + Math.max(-1, ...state.turns.map((turn) => turn.round))
  const shared = { state, cast, now, onOpen: setOpenId }
  const isByBall = settings.isBallByBall || state.live !== null
  const ended = state.played.find(({ eventId }) => eventId === endedId)
  const endedRound = ended && (state.plan?.design.rounds[ended.round ?? -1] ?? null)
  return (
    <>
      <PitchMain about={`${state.live?.eventId} ${round?.turns[0].index} ${state.status}`}>
        {state.status === 'ended' ? null : props.rotation}
        <LeaverNotice
          playerIds={wasToLeave(state)}
          cast={cast}
          onDeeds={onDeeds}
          onPlanAnew={props.onPlanAnew}
        />
        {state.status === 'ended' ? (
          <OverScreen
            state={state}
            sessionId={pack.session.id}
            squadId={pack.session.squadId}
            isHelper={pack.viewer.kind === 'helper'}
            isAllSent={props.isAllSent}
          />
        ) : null}
        {state.live ? <LiveBall {...shared} live={state.live} roundCount={roundCount} /> : null}
        {round && !state.live && isByBall ? (
          <NextBall
            {...shared}
            round={round}
            roundCount={roundCount}
            sized={size}
            chosen={chosen}
            onChoose={(index) => {
              const [{ index: turn, stations }] = round.turns
              const by = round.design?.choice?.by ?? 'coach'
              const [first] = stations
              const side = by === 'attack' && first ? sideOfRole(first, 'attack', cast) : null
              onDeeds([{ kind: 'choice', turn, by, size: index, side }])
            }}
          />
        ) : null}
        {round && !isByBall ? (
          <RoundScreen
            round={round}
            roundCount={roundCount}
            isFirst={state.played.length === 0}
            cast={cast}
            onOpen={setOpenId}
          >
            {round.design?.choice && state.status === 'running' ? (
              <ChoiceTally
                state={state}
                round={round}
                choice={round.design.choice}
                cast={cast}
                onDeeds={onDeeds}
              />
            ) : null}
          </RoundScreen>
        ) : null}
        {state.status !== 'ended' ? <WaitingList {...shared} /> : null}
        {state.status === 'ended' ? null : props.proof}
        <NothingLeft state={state} />
        {openId ? (
          <PlayerMoves
            key={openId}
            playerId={openId}
            pack={pack}
            state={state}
            cast={cast}
            onDeeds={onDeeds}
            onNotOut={props.onNotOut}
            onClose={() => setOpenId(null)}
          />
        ) : null}
        {ended && endedRound ? (
          <EndingSheet
            round={endedRound}
            size={state.choices.find(({ turn }) => turn === ended.index)?.size ?? null}
            stations={ended.parts.at(-1)?.stations ?? []}
            cast={cast}
            onEndings={(endings) => onDeeds([{ kind: 'turnEnd', start: ended.eventId, endings }])}
            onClose={() => setEndedId(null)}
          />
        ) : null}
      </PitchMain>
      <PitchFooter
        undo={undo}
        tabs={tabs}
        stop={<StopButton state={state} cast={cast} isByBall={isByBall} onDeeds={onDeeds} />}
      >
        {state.status === 'notBegun' ? (
          props.begin
        ) : (
          <ActionBar
            state={state}
            cast={cast}
            isByBall={isByBall}
            stations={size.stations}
            onDeeds={onDeeds}
            onBallOver={(live) => {
              onDeeds([{ kind: 'turnEnd', start: live.eventId, endings: [] }])
              const endings = state.plan?.design.rounds[live.round ?? -1]?.endings ?? []
              if (settings.countsPoints && endings.length > 0) setEndedId(live.eventId)
            }}
          />
        )}
      </PitchFooter>
    </>
  )
}

/** Nothing is left to be played, or nothing was ever planned. */
function NothingLeft({ state }: { readonly state: PitchState }) {
  if (state.next || state.live || state.status === 'ended') return null
  return (
    <p className="border-2 border-ink p-2">
      {state.turns.length === 0
        ? 'No turns are planned for this practice. Who is here is written down all the same; the turns can be typed in afterwards.'
        : 'Everything that was planned is played.'}
    </p>
  )
}
