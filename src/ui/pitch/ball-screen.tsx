'use client'

import type { Seconds } from '#common/time'
import type { LiveTurn } from '#pitch/live-turn'
import type { PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import type { PlayerId } from '#squad/player'
import { ballNumber, ballsOf, ballTitle } from '#ui/pitch/ball-number'
import type { Cast } from '#ui/pitch/cast'
import { ChoicePart } from '#ui/pitch/choice-part'
import { type Sized, withoutSteppingOff } from '#ui/pitch/choice-size'
import { clockWords } from '#ui/pitch/clock-words'
import { OnAndOff, PlacesCard } from '#ui/pitch/places-card'
import { RoundHead } from '#ui/pitch/round-head'
import { RunningClock } from '#ui/pitch/running-clock'

type BallScreenProps = {
  readonly state: PitchState
  readonly roundCount: number
  readonly cast: Cast
  readonly now: () => number
  readonly onOpen: (playerId: PlayerId) => void
}

/** The ball that is being played. */
export function LiveBall({ live, state, cast, now, onOpen }: BallScreenProps & { readonly live: LiveTurn }) {
  const planned = plannedSeconds(live, state)
  return (
    <section aria-labelledby="ball" className="space-y-3">
      <h2 id="ball" className="flex flex-wrap items-baseline justify-between text-2xl font-bold">
        <span>{playingWords(live, state)}</span>
        <span>
          <RunningClock state={state} now={now} since={live.start} label="Time of this ball" />
          {planned === null ? null : (
            <span className="ml-1 text-lg font-semibold tabular-nums">of {clockWords(planned)}</span>
          )}
        </span>
      </h2>
      <PlacesCard stations={live.stations} on={new Set()} cast={cast} onOpen={onOpen} />
    </section>
  )
}

function playingWords(live: LiveTurn, state: PitchState): string {
  const design = state.plan?.design.rounds[live.round ?? -1] ?? null
  const number = ballNumber(state, live.index)
  if (design?.isFreeGame) return `Playing: ${ballTitle(number, design).toLowerCase()}`
  return `Playing: ball ${number} of ${ballsOf(state, live.round)}`
}

/** How long the ball is to be played; null: until it is dead, or nobody planned it. */
function plannedSeconds(live: LiveTurn, { plan, turns }: PitchState): Seconds | null {
  const isUntilDead = plan?.design.rounds[live.round ?? -1]?.isUntilDead ?? false
  return isUntilDead ? null : (turns[live.index]?.seconds ?? null)
}

type NextBallProps = BallScreenProps & {
  readonly round: UpcomingRound
  readonly sized: Sized
  readonly chosen: number | null
  readonly onChoose: (size: number) => void
}

/** The ball that comes next: who comes on and who steps off, then everyone's place. */
export function NextBall(props: NextBallProps) {
  const { round, state, roundCount, cast, onOpen, sized, chosen, onChoose } = props
  const [turn] = round.turns
  const isFirst = state.played.length === 0
  const choice = round.design?.choice ?? null
  return (
    <section aria-labelledby="round" className="space-y-3">
      <RoundHead
        round={round}
        roundCount={roundCount}
        cast={cast}
        ball={{ number: ballNumber(state, turn.index), of: ballsOf(state, round.round) }}
      />
      {isFirst ? null : <OnAndOff {...withoutSteppingOff(turn, sized.stepsOff)} cast={cast} />}
      {choice ? (
        <ChoicePart
          choice={choice}
          chosen={chosen}
          stepsOff={sized.stepsOff}
          cast={cast}
          onChoose={onChoose}
        />
      ) : null}
      <PlacesCard
        stations={sized.stations}
        on={new Set(isFirst ? [] : turn.on.map(({ playerId }) => playerId))}
        cast={cast}
        onOpen={onOpen}
      />
    </section>
  )
}
