'use client'

import type { ReactNode } from 'react'
import type { UpcomingRound, UpcomingTurn } from '#pitch/upcoming'
import type { PlayerId } from '#squad/player'
import { ballsWords, ballTitle } from '#ui/pitch/ball-number'
import type { Cast } from '#ui/pitch/cast'
import { OnAndOff, PlacesCard, placeWords } from '#ui/pitch/places-card'
import { RoundHead } from '#ui/pitch/round-head'
import { isChangeOver, isMostlyNew, WholeBall } from '#ui/pitch/whole-ball'
import { listed } from '#ui/plural'

type RoundScreenProps = {
  readonly round: UpcomingRound
  readonly roundCount: number
  /** Nobody has played yet: all come on, and it need not be said. */
  readonly isFirst: boolean
  readonly cast: Cast
  readonly onOpen: (playerId: PlayerId) => void
  /** What is to be tapped while the round is played. */
  readonly children?: ReactNode
}

/** A whole round on one screen: who begins it, and what changes ball by ball. */
export function RoundScreen({ round, roundCount, isFirst, cast, onOpen, children }: RoundScreenProps) {
  const [first, ...later] = round.turns
  const on = new Set(isFirst ? [] : first.on.map(({ playerId }) => playerId))
  return (
    <section aria-labelledby="round" className="space-y-3">
      <RoundHead round={round} roundCount={roundCount} cast={cast} />
      {isFirst ? null : <OnAndOff on={first.on} off={first.off} cast={cast} />}
      <PlacesCard stations={first.stations} on={on} cast={cast} onOpen={onOpen} />
      {children}
      {later.length > 0 ? <LaterBalls turns={later} design={round.design} cast={cast} /> : null}
    </section>
  )
}

type LaterBallsProps = {
  readonly turns: readonly UpcomingTurn[]
  readonly design: UpcomingRound['design']
  readonly cast: Cast
}

function LaterBalls({ turns, design, cast }: LaterBallsProps) {
  const isAlwaysSame = turns.every(({ on, off, moved }) => on.length + off.length + moved.length === 0)
  if (isAlwaysSame)
    return <p className="font-semibold">The same places for all {ballsWords(turns.length + 1, design)}.</p>
  // All of a round are shown in one way.
  const isWhole = turns.some(isMostlyNew)
  return (
    <ol className="space-y-2" start={2}>
      {turns.map((turn, index) => (
        <li key={turn.index} className="border-t-2 border-ink pt-1">
          <h3 className="text-lg font-semibold">{ballTitle(index + 2, design)}</h3>
          {isChangeOver(turn) ? (
            <p className="text-xl font-bold">Attack and defence change over.</p>
          ) : isWhole ? (
            <WholeBall turn={turn} cast={cast} />
          ) : (
            <BallChange turn={turn} cast={cast} />
          )}
        </li>
      ))}
    </ol>
  )
}

function BallChange({ turn, cast }: { readonly turn: UpcomingTurn; readonly cast: Cast }) {
  const { on, off, moved, stations } = turn
  if (on.length + off.length + moved.length === 0) return <p>The same places.</p>
  const names = off.map(cast.nameOf)
  return (
    <>
      <ul>
        {on.map((placed) => (
          <li key={placed.playerId} className="flex flex-wrap items-baseline gap-x-2">
            <span className="border-2 border-ink bg-ink px-1 text-base leading-tight font-bold text-white">
              ON
            </span>
            <span className="text-2xl font-bold break-words">{cast.nameOf(placed.playerId)}</span>
            <span>{placeWords(placed, stations.length)}</span>
          </li>
        ))}
        {moved.map((placed) => (
          <li key={placed.playerId} className="flex flex-wrap items-baseline gap-x-2">
            <span className="border-2 border-ink px-1 text-base leading-tight font-bold">TO</span>
            <span className="text-2xl font-bold break-words">{cast.nameOf(placed.playerId)}</span>
            <span>{placeWords(placed, stations.length)}</span>
          </li>
        ))}
      </ul>
      {names.length > 0 ? (
        <p className="flex flex-wrap items-baseline gap-x-2">
          <span className="border-2 border-dashed border-ink px-1 text-base leading-tight font-bold">
            OFF
          </span>
          <span className="text-2xl font-bold break-words">{listed(names)}</span>
        </p>
      ) : null}
    </>
  )
}
