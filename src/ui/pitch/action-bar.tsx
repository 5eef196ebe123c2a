'use client'

import { useState } from 'react'
import type { LiveTurn } from '#pitch/live-turn'
import type { PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import type { Station } from '#practice/turn'
import { ballNumber, ballsWords, ballTitle } from '#ui/pitch/ball-number'
import type { Cast } from '#ui/pitch/cast'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import { roundDoneDeeds } from '#ui/pitch/round-choices'
import { StopSheet } from '#ui/pitch/stop-sheet'

type ActionBarProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly isByBall: boolean
  /** Places of the next ball, in the size that was chosen. */
  readonly stations: readonly Station[]
  readonly onDeeds: OnDeeds
  readonly onBallOver: (live: LiveTurn) => void
}

/** The one thing to tap now, and the way to stop. */
export function ActionBar({ state, cast, isByBall, stations, onDeeds, onBallOver }: ActionBarProps) {
  const { live, nextRound: round } = state
  if (state.status === 'ended') return null
  return (
    <>
      {live ? (
        <PitchButton weight="main" className="w-full text-2xl" onClick={() => onBallOver(live)}>
          Ball over
        </PitchButton>
      ) : null}
      {!live && round && isByBall ? (
        <PitchButton
          weight="main"
          className="w-full text-2xl"
          onClick={() => onDeeds([{ kind: 'turnStart', turn: round.turns[0].index, stations }])}
        >
          Start {ballTitle(ballNumber(state, round.turns[0].index), round.design).toLowerCase()}
        </PitchButton>
      ) : null}
      {!live && round && !isByBall ? (
        // Another round, or one that is partly played, begins with all its balls.
        <RoundDone key={round.turns[0].index} state={state} cast={cast} round={round} onDeeds={onDeeds} />
      ) : null}
    </>
  )
}

type StopButtonProps = Pick<ActionBarProps, 'state' | 'cast' | 'isByBall' | 'onDeeds'>

/** The way to stop before the plan is at its end; in a round that nobody tapped it asks how much of it was played. */
export function StopButton({ state, cast, isByBall, onDeeds }: StopButtonProps) {
  const [isStopping, setIsStopping] = useState(false)
  const { live, nextRound: round } = state
  if (state.status !== 'running') return null
  const stop = () => (round && !live && !isByBall ? setIsStopping(true) : onDeeds([{ kind: 'stop' }]))
  return (
    <>
      <PitchButton weight={round || live ? 'plain' : 'main'} className="shrink-0 text-lg" onClick={stop}>
        Stop here
      </PitchButton>
      {isStopping && round ? (
        <StopSheet
          state={state}
          cast={cast}
          round={round}
          onDeeds={onDeeds}
          onClose={() => setIsStopping(false)}
        />
      ) : null}
    </>
  )
}

type RoundDoneProps = Pick<ActionBarProps, 'state' | 'cast' | 'onDeeds'> & { readonly round: UpcomingRound }

/** One tap for the round; the one that ends the last round ends the practice with it. */
function RoundDone({ state, cast, round, onDeeds }: RoundDoneProps) {
  const most = round.turns.length
  const [balls, setBalls] = useState(most)
  const isLast = state.turns.at(-1)?.round === round.round
  const done = () =>
    onDeeds([
      ...roundDoneDeeds(state, { round, balls, cast }),
      ...(isLast ? [{ kind: 'stop' } as const] : []),
    ])
  return (
    <div className="flex gap-2">
      <PitchButton
        aria-label={round.design?.isFreeGame ? 'One half fewer' : 'One ball fewer'}
        className="min-w-14 text-2xl"
        disabled={balls <= 1}
        onClick={() => setBalls(balls - 1)}
      >
        −
      </PitchButton>
      <PitchButton weight="main" className="min-w-0 flex-1 text-xl" onClick={done}>
        {isLast ? 'Last round done' : 'Round done'}, {ballsWords(balls, round.design)}
      </PitchButton>
      {balls < most ? (
        <PitchButton
          aria-label={round.design?.isFreeGame ? 'One half more' : 'One ball more'}
          className="min-w-14 text-2xl"
          onClick={() => setBalls(balls + 1)}
        >
          +
        </PitchButton>
      ) : null}
    </div>
  )
}
