'use client'

import { useState } from 'react'
import { asPlannedDeed } from '#pitch/as-planned-deed'
import type { Deed } from '#pitch/pitch-event'
import type { PitchState } from '#pitch/pitch-state'
import type { PlayerId } from '#squad/player'
import type { Cast } from '#ui/pitch/cast'
import { PitchButton } from '#ui/pitch/pitch-button'
import { Sheet } from '#ui/pitch/sheet'

type AsPlannedSheetProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly onDeeds: (deeds: readonly Deed[]) => void
  readonly onClose: () => void
}

/** For a coach who did not tap: were all rounds as planned, or up to which, and who left. */
export function AsPlannedSheet({ state, cast, onDeeds, onClose }: AsPlannedSheetProps) {
  const roundCount = 1 + Math.max(-1, ...state.turns.map(({ round }) => round))
  const [rounds, setRounds] = useState(roundCount)
  const [left, setLeft] = useState<ReadonlyMap<PlayerId, number>>(new Map())
  const expected = new Set(state.plan?.players.map(({ playerId }) => playerId) ?? [])
  const there = state.players.filter(
    ({ playerId, state: now, isOut }) =>
      !isOut && now !== 'gone' && (now !== 'missing' || expected.has(playerId)),
  )
  const toggle = (playerId: PlayerId) => {
    const next = new Map(left)
    if (!next.delete(playerId)) next.set(playerId, Math.max(0, rounds - 1))
    setLeft(next)
  }
  const say = () => {
    const planned = asPlannedDeed(state.turns, {
      stoppedAfterRound: rounds === roundCount ? null : rounds - 1,
      left: [...left].map(([playerId, round]) => ({ playerId, afterRound: round === 0 ? null : round - 1 })),
    })
    onDeeds([...(state.status === 'notBegun' ? [{ kind: 'begin' } as const] : []), planned, { kind: 'stop' }])
    onClose()
  }
  const choice =
    'tap min-w-14 cursor-pointer border-2 border-ink bg-leaf px-2 font-bold aria-pressed:bg-ink aria-pressed:text-white'
  return (
    <Sheet title="As planned" onClose={onClose}>
      <fieldset>
        <legend className="font-semibold">The last round that was played</legend>
        <div className="mt-1 flex flex-wrap gap-2">
          {Array.from({ length: roundCount }, (_, index) => index + 1).map((round) => (
            <button
              key={round}
              type="button"
              aria-pressed={round === rounds}
              className={choice}
              onClick={() => setRounds(round)}
            >
              {round === roundCount ? `${round} (all)` : round}
            </button>
          ))}
        </div>
      </fieldset>
      <fieldset>
        <legend className="font-semibold">Who left early?</legend>
        <div className="mt-1 flex flex-wrap gap-2">
          {there.map(({ playerId }) => (
            <button
              key={playerId}
              type="button"
              aria-pressed={left.has(playerId)}
              className={choice}
              onClick={() => toggle(playerId)}
            >
              {cast.nameOf(playerId)}
            </button>
          ))}
        </div>
      </fieldset>
      {[...left].map(([playerId, round]) => (
        <div key={playerId} className="flex items-center gap-2">
          <span className="flex-1">
            {cast.nameOf(playerId)} left after round <strong className="tabular-nums">{round}</strong>
          </span>
          <PitchButton
            aria-label={`${cast.nameOf(playerId)} left a round earlier`}
            disabled={round <= 0}
            onClick={() => setLeft(new Map(left).set(playerId, round - 1))}
          >
            −
          </PitchButton>
          <PitchButton
            aria-label={`${cast.nameOf(playerId)} left a round later`}
            disabled={round >= rounds - 1}
            onClick={() => setLeft(new Map(left).set(playerId, round + 1))}
          >
            +
          </PitchButton>
        </div>
      ))}
      <PitchButton weight="main" className="w-full" onClick={say}>
        {rounds === roundCount ? 'All rounds as planned' : `As planned, stopped after round ${rounds}`}
      </PitchButton>
    </Sheet>
  )
}
