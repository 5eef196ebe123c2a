'use client'

import { useCallback } from 'react'
import { type PitchState, secondNow } from '#pitch/pitch-state'
import type { PlayerId } from '#squad/player'
import { capital } from '#ui/capital'
import type { Cast } from '#ui/pitch/cast'
import { clockWords } from '#ui/pitch/clock-words'
import { NameButton } from '#ui/pitch/name-button'
import { useSecond } from '#ui/pitch/use-second'
import { words } from '#ui/words'

type WaitingListProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly now: () => number
  readonly onOpen: (playerId: PlayerId) => void
}

/** Who waits, longest first, and how long by the clock. */
export function WaitingList({ state, cast, now, onOpen }: WaitingListProps) {
  const { beganAt, endedAt } = state
  const read = useCallback(() => secondNow({ beganAt }, endedAt ?? now()), [beganAt, endedAt, now])
  const second = useSecond(read, state.status === 'running')
  if (state.waiting.length === 0) return null
  return (
    <section aria-labelledby="waiting">
      <h3 id="waiting" className="text-lg font-bold">
        {capital(words.doing.rest)}
      </h3>
      <ul className="grid grid-cols-[repeat(auto-fill,minmax(9rem,1fr))] gap-x-3">
        {state.waiting.map(({ playerId, since }) => (
          <li key={playerId} className="flex">
            <NameButton
              playerId={playerId}
              cast={cast}
              onOpen={onOpen}
              note={state.status === 'notBegun' ? undefined : clockWords(second - since)}
            />
          </li>
        ))}
      </ul>
    </section>
  )
}
