'use client'

import { type ReactNode, useCallback, useState } from 'react'
import { lines } from '#match/match'
import type { PlayerId } from '#squad/player'
import { secondOfPeriod } from '#touchline/match-clock'
import type { MatchDeed, PlacedPlayer } from '#touchline/match-deed'
import type { MatchPack } from '#touchline/match-pack'
import type { MatchState } from '#touchline/match-state'
import { capital } from '#ui/capital'
import { clockWords } from '#ui/pitch/clock-words'
import { IntoTheBook } from '#ui/pitch/into-the-book'
import type { ListedPlayer } from '#ui/pitch/register-words'
import { listed } from '#ui/plural'
import { BigClock } from '#ui/touchline/big-clock'
import { CallCard } from '#ui/touchline/call-card'
import { ChangeLines } from '#ui/touchline/change-lines'
import { GoalsPart } from '#ui/touchline/goals-part'
import { MatchPlayerSheet } from '#ui/touchline/match-player-sheet'
import { withLine, withSwap } from '#ui/touchline/new-places'
import { OffList } from '#ui/touchline/off-list'
import { OnPitch } from '#ui/touchline/on-pitch'
import { periodName } from '#ui/touchline/period-name'
import { words } from '#ui/words'

type MatchNowProps = {
  readonly pack: Omit<MatchPack, 'events' | 'cursor'>
  readonly state: MatchState
  /** Who is on, or is to be on at the next kick-off. */
  readonly on: readonly PlacedPlayer[]
  readonly players: readonly ListedPlayer[]
  readonly nameOf: (id: PlayerId) => string
  readonly now: () => number
  readonly isAllSent: boolean
  readonly onDeeds: (deeds: readonly MatchDeed[]) => void
  /** Other places: tapped at once while a period runs, else for the next kick-off. */
  readonly onPlaces: (on: readonly PlacedPlayer[]) => void
  readonly onRegister: (playerId: PlayerId, is: 'here' | 'notPlaying' | 'out' | 'gone') => void
  readonly onNotOut: (playerId: PlayerId) => void
  /** What has to be seen first. */
  readonly notices: ReactNode
}

/** Who is on, who comes on next, and who is off. */
export function MatchNow(props: MatchNowProps) {
  const { pack, state, on, players, nameOf, now, onDeeds } = props
  const [openId, setOpenId] = useState<PlayerId | null>(null)
  const isOn = new Set(on.map(({ playerId }) => playerId))
  const byId = new Map(state.players.map((player) => [player.id, player]))
  const able = players.filter(
    ({ id, state: how }) => (how === 'here' || how === 'missing') && !byId.get(id)?.sentOff,
  )
  const off = able.filter(
    ({ id, isExpected, state: how }) =>
      !isOn.has(id) && (how === 'here' || (isExpected && state.beganAt === null)),
  )
  const longestFirst = off
    .map(({ id }) => id)
    .toSorted((one, other) => (byId.get(one)?.placedSince ?? 0) - (byId.get(other)?.placedSince ?? 0))
  const noteOf = (id: PlayerId) => {
    const player = byId.get(id)
    return player && state.beganAt !== null ? clockWords(player.seconds) : null
  }
  const offNote = (id: PlayerId) => {
    const player = byId.get(id)
    if (!player || state.beganAt === null) return null
    const since = state.second - player.placedSince
    return `${clockWords(player.seconds)}${state.status === 'running' ? `, off ${clockWords(since)}` : ''}`
  }
  const open = players.find(({ id }) => id === openId)
  const openLine = on.find(({ playerId }) => playerId === openId)?.line ?? null
  const away = state.players.filter(({ sentOff }) => sentOff !== null)
  if (state.status === 'ended')
    return (
      <section aria-labelledby="over" className="space-y-4">
        <h2 id="over" className="text-2xl font-bold">
          The match is over
        </h2>
        <IntoTheBook
          sessionId={pack.session.id}
          squadId={pack.session.squadId}
          isHelper={pack.viewer.kind === 'helper'}
          isAllSent={props.isAllSent}
        />
      </section>
    )
  return (
    <div className="space-y-4">
      <PeriodClock state={state} now={now} />
      <NextCall state={state} now={now} nameOf={nameOf} onDeeds={onDeeds} />
      {props.notices}
      {pack.countsGoals && state.beganAt !== null ? (
        <GoalsPart
          {...state.goals}
          onGoal={(side) => onDeeds([{ kind: 'goal', side }])}
          onLess={(side) => {
            const last = state.undoable.find(
              ({ event: { deed } }) => deed.kind === 'goal' && deed.side === side,
            )
            if (last) onDeeds([{ kind: 'undo', undoes: last.event.id }])
          }}
        />
      ) : null}
      <OnPitch
        title={state.status === 'running' ? 'On now' : 'On at the kick-off'}
        on={on}
        missing={state.emptyPlaces}
        nameOf={nameOf}
        noteOf={noteOf}
        onOpen={setOpenId}
      />
      <OffList title="Off" playerIds={longestFirst} nameOf={nameOf} noteOf={offNote} onOpen={setOpenId} />
      <OffList
        title="Not playing"
        playerIds={players.flatMap(({ id, state: how }) =>
          how === 'notPlaying' || how === 'out' ? [id] : [],
        )}
        nameOf={nameOf}
        noteOf={(id) => (byId.get(id)?.isOut ? words.register.out : offNote(id))}
        onOpen={setOpenId}
      />
      {away.length > 0 ? (
        <p className="font-semibold">
          {away.map((one) => sentOffSentence(one, { nameOf, second: state.second })).join(' ')}
        </p>
      ) : null}
      {open ? (
        <MatchPlayerSheet
          key={`${open.id} ${open.state} ${openLine}`}
          player={open}
          isBegun={state.beganAt !== null}
          line={openLine}
          openLines={lines.filter((line) =>
            line !== 'keeper' ? state.places[line] > 0 : state.places.keeper > 0 && byId.get(open.id)?.keeps,
          )}
          partners={openLine ? longestFirst : on.map(({ playerId }) => playerId)}
          others={on.map(({ playerId }) => playerId).filter((id) => id !== open.id)}
          nameOf={nameOf}
          onHurt={(id) => props.onRegister(id, 'notPlaying')}
          onSwap={(one, other) => props.onPlaces(withSwap(on, one, other))}
          onLine={(id, line) => props.onPlaces(withLine(on, id, line))}
          onSentOff={(playerId, minutes) =>
            onDeeds([{ kind: 'sentOff', playerId, seconds: minutes === null ? null : minutes * 60 }])
          }
          onRegister={props.onRegister}
          onNotOut={props.onNotOut}
          onClose={() => setOpenId(null)}
        />
      ) : null}
    </div>
  )
}

function sentOffSentence(
  { id, sentOff }: MatchState['players'][number],
  { nameOf, second }: { readonly nameOf: (id: PlayerId) => string; readonly second: number },
): string {
  const until = sentOff?.until ?? null
  return until === null
    ? `${nameOf(id)} was sent off.`
    : `${nameOf(id)} may come back in ${clockWords(until - second)}.`
}

function PeriodClock({ state, now }: { readonly state: MatchState; readonly now: () => number }) {
  const { period, isClockStopped, format } = state
  const read = useCallback(() => (period ? secondOfPeriod(period, now()) : 0), [period, now])
  if (!period) return null
  return (
    <BigClock
      read={read}
      isRunning={!isClockStopped}
      length={period.planned}
      name={capital(periodName(period.period, format))}
      note={isClockStopped ? 'the clock stands' : null}
    />
  )
}

type NextCallProps = {
  readonly state: MatchState
  readonly now: () => number
  readonly nameOf: (id: PlayerId) => string
  readonly onDeeds: (deeds: readonly MatchDeed[]) => void
}

/** The change to be called, and in a line the one after it. */
function NextCall({ state, now, nameOf, onDeeds }: NextCallProps) {
  const { period, call, isClockStopped } = state
  const second = call?.second ?? 0
  const read = useCallback(
    () => (period ? second - secondOfPeriod(period, now()) : second),
    [period, now, second],
  )
  const after = state.upcoming[0]
  if (!call || !period) return null
  return (
    <>
      <CallCard
        key={call.due}
        id={`${call.due}`}
        change={call}
        at={clockWords(call.second)}
        read={read}
        isRunning={!isClockStopped}
        nameOf={nameOf}
        onDone={() => onDeeds([{ kind: 'changeMade', due: call.due, on: call.after }])}
        onDrop={() => onDeeds([{ kind: 'changeDropped', due: call.due }])}
      />
      {call.missing.length > 0 ? (
        <p className="font-semibold">By the plan, but not there: {listed(call.missing.map(nameOf))}.</p>
      ) : null}
      {after ? (
        <details className="border border-ink p-2">
          <summary className="cursor-pointer font-semibold">
            After that, at {clockWords(after.second)}
          </summary>
          <ChangeLines change={after} nameOf={nameOf} />
        </details>
      ) : null}
    </>
  )
}
