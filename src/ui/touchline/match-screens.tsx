'use client'

import { type ReactNode, useState } from 'react'
import { placesInAll } from '#match/format/places-in-all'
import { allHere } from '#pitch/all-here'
import { notOutAfterAll } from '#pitch/not-out-after-all'
import type { PlayerId } from '#squad/player'
import { isAble } from '#touchline/is-able'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'
import type { MatchEvent, MatchPack } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import type { PromiseFix, WatchedPromise } from '#touchline/promise-watch'
import { sayPromise } from '#touchline/say-promise'
import { NotTaken } from '#ui/pitch/not-taken'
import { PitchFooter, PitchMain } from '#ui/pitch/pitch-footer'
import { PitchFrame } from '#ui/pitch/pitch-frame'
import { RegisterScreen } from '#ui/pitch/register-screen'
import type { OfflinePages, Saved } from '#ui/pitch/saved-line'
import { useWakeLock } from '#ui/pitch/use-wake-lock'
import { listedInMatch } from '#ui/touchline/listed-in-match'
import { MatchActions } from '#ui/touchline/match-actions'
import { matchAsideSentences } from '#ui/touchline/match-aside-words'
import { matchDeedWords } from '#ui/touchline/match-deed-words'
import { MatchMore } from '#ui/touchline/match-more'
import { MatchNow } from '#ui/touchline/match-now'
import { type MatchTab, MatchTabs } from '#ui/touchline/match-tabs'
import { MatchUndoButton } from '#ui/touchline/match-undo-button'
import { minutesRows } from '#ui/touchline/minutes-rows'
import { MinutesScreen } from '#ui/touchline/minutes-screen'
import { periodName } from '#ui/touchline/period-name'
import { PromiseWarning } from '#ui/touchline/promise-warning'
import { sayFix } from '#ui/touchline/say-fix'

export type MatchScreensProps = {
  readonly pack: Omit<MatchPack, 'events' | 'cursor'>
  readonly state: MatchState
  readonly events: readonly MatchEvent[]
  readonly saved: Saved
  readonly pages: OfflinePages
  /** What the book did not take of what was tapped here. */
  readonly refusals: readonly { readonly id: string; readonly deed: MatchDeed; readonly why: string | null }[]
  /** The time, set right by the server's clock, in milliseconds. */
  readonly now: () => number
  readonly onDeeds: (deeds: readonly MatchDeed[]) => void
  readonly onGuest: (name: string) => void
  /** Plans the rest anew; null: this phone plans nothing. */
  readonly onPlan: (() => void) | null
  /** What has to be seen before all else: a plan made anew, a promise in danger. */
  readonly notices: ReactNode
  readonly watch: readonly WatchedPromise[]
  /** Of promises in danger, the change that keeps each. */
  readonly fixes: ReadonlyMap<PlayerId, PromiseFix>
  readonly onFix: (playerId: PlayerId) => void
}

/** One match at the touchline: who is here, who is on and who comes on next, what everyone has had. */
export function MatchScreens(props: MatchScreensProps) {
  const { pack, state, events, onDeeds } = props
  const [chosen, setChosen] = useState<MatchTab | null>(null)
  const [starters, setStarters] = useState<Starters | null>(null)
  const isBegun = state.status !== 'notBegun'
  const tab = chosen ?? (isBegun ? 'now' : 'here')
  useWakeLock(state.status === 'running' || state.status === 'atBreak')
  const players = listedInMatch(state, pack)
  const names = new Map(players.map(({ id, name }) => [id, name]))
  const nameOf = (id: PlayerId) => names.get(id) ?? 'Somebody'
  const next = state.nextKickOff
  const isTaken = state.players.some(({ state: how, isAssumed }) => how === 'here' && !isAssumed)
  const untapped = players.filter(({ state: how, isExpected }) => how === 'missing' && isExpected)
  // Where the plan does not fit who is here, the kick-off brings a new one.
  const here = players.filter(({ state: how }) => how === 'here').length + (isTaken ? 0 : untapped.length)
  const on = next ? startersOf(starters, { period: next.period, on: next.on, state }) : state.on
  const undo = <MatchUndoButton state={state} events={events} nameOf={nameOf} onDeeds={onDeeds} />
  const told = props.refusals.map(({ id, deed, why }) => ({
    id,
    sentence: `${matchDeedWords(deed, nameOf)}: ${why ?? 'The book did not take it.'}`,
  }))
  const onRegister = (playerId: PlayerId, is: 'here' | 'notPlaying' | 'out' | 'gone') =>
    onDeeds([{ kind: 'register', playerId, state: is }])
  const kickOff = () => {
    if (!next) return
    // Where no name was tapped, all who are expected are taken to be here.
    const all = isBegun || isTaken ? [] : untapped
    onDeeds([...allHere(all.map(({ id }) => id)), { kind: 'kickOff', period: next.period, on }])
    setStarters(null)
    setChosen('now')
  }
  const setNotOut = (playerId: PlayerId) => onDeeds(notOutAfterAll(state.undoable, playerId))
  const period = state.period?.period ?? next?.period ?? 0
  const actions = (
    <MatchActions
      status={state.status}
      periodName={periodName(period, state.format)}
      isLast={period >= state.format.periodSeconds.length}
      clockStands={state.isClockStopped}
      count={isBegun || !props.onPlan ? on.length : Math.min(placesInAll(state.places), here)}
      onKickOff={kickOff}
      onPeriodEnd={() => onDeeds([{ kind: 'periodEnd', period }])}
      onClock={() => onDeeds([{ kind: state.isClockStopped ? 'clockGoesOn' : 'clockStops' }])}
      onFullTime={() => onDeeds([{ kind: 'fullTime' }])}
    />
  )
  const notices = (
    <>
      <NotTaken refusals={told} />
      {state.status === 'notBegun' ? null : <PromiseWarning warnings={warningsOf(props, nameOf)} />}
      {props.notices}
    </>
  )
  const { id: sessionId, squadId } = pack.session
  return (
    <PitchFrame session={pack.session} saved={props.saved} pages={props.pages} clock={null}>
      <PitchMain about={`${tab} ${tab === 'now' ? state.status : ''}`}>
        {tab === 'now' ? (
          <MatchNow
            pack={pack}
            state={state}
            on={on}
            players={players}
            nameOf={nameOf}
            now={props.now}
            isAllSent={props.saved.waiting === 0}
            onDeeds={onDeeds}
            onPlaces={(places) =>
              next
                ? setStarters({ period: next.period, on: places })
                : onDeeds([{ kind: 'places', on: places }])
            }
            onRegister={onRegister}
            onNotOut={setNotOut}
            notices={notices}
          />
        ) : null}
        {tab === 'here' ? (
          <>
            {notices}
            <RegisterScreen
              players={players}
              isBegun={isBegun}
              onRegister={onRegister}
              onNotOut={setNotOut}
              onGuest={props.onGuest}
              onEveryone={(ids) => onDeeds(allHere(ids))}
            />
          </>
        ) : null}
        {tab === 'minutes' ? <MinutesScreen rows={minutesRows(state, props.watch, nameOf)} /> : null}
        {tab === 'more' ? (
          <MatchMore
            sessionId={sessionId}
            squadId={squadId}
            isHelper={pack.viewer.kind === 'helper'}
            onPlan={state.status === 'ended' ? null : props.onPlan}
            sentence={state.sentence ?? state.plan?.proof.sentence ?? ''}
            toKnow={[
              ...new Set(told.map(({ sentence }) => `Not taken: ${sentence}`)),
              ...matchAsideSentences(state.setAside.map(({ why }) => why)),
            ]}
          />
        ) : null}
      </PitchMain>
      <PitchFooter
        undo={undo}
        stop={state.status === 'running' ? actions : null}
        tabs={<MatchTabs tab={tab} onTab={setChosen} />}
      >
        {state.status !== 'running' && (tab === 'now' || tab === 'here') ? actions : null}
      </PitchFooter>
    </PitchFrame>
  )
}

/** Promises that are in danger, each with the change that keeps it. */
function warningsOf(
  { watch, fixes, state, onFix }: MatchScreensProps,
  nameOf: (id: PlayerId) => string,
): Parameters<typeof PromiseWarning>[0]['warnings'] {
  const clock = state.period && { period: state.period.period, second: state.second - state.period.start }
  return watch
    .filter(({ how }) => how === 'inDanger')
    .map((promise) => {
      const { playerId } = promise
      const fix = fixes.get(playerId)
      return {
        id: playerId,
        sentence: sayPromise(promise, { name: nameOf(playerId), format: state.format }),
        change: fix ? sayFix(fix, { playerId, now: clock, nameOf }) : null,
        onChange: () => onFix(playerId),
      }
    })
}

/** Who begins a period, otherwise than planned, until it is kicked off. */
type Starters = { readonly period: number; readonly on: readonly PlacedPlayer[] }

/** As they were chosen on this phone, as long as all of them are there. */
function startersOf(
  chosen: Starters | null,
  { period, on, state }: Starters & { readonly state: MatchState },
): readonly PlacedPlayer[] {
  if (!chosen || chosen.period !== period || chosen.on.length !== on.length) return on
  const able = new Set(state.players.filter((player) => isAble(player) && !player.isOut).map(({ id }) => id))
  return chosen.on.every(({ playerId }) => able.has(playerId)) ? chosen.on : on
}
