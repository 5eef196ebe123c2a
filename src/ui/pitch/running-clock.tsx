'use client'

import { useCallback } from 'react'
import { type PitchState, secondNow } from '#pitch/pitch-state'
import { clockWords } from '#ui/pitch/clock-words'
import { useSecond } from '#ui/pitch/use-second'

type RunningClockProps = {
  readonly state: Pick<PitchState, 'beganAt' | 'endedAt' | 'status'>
  readonly now: () => number
  /** Counts from this second of the practice. */
  readonly since?: number
  readonly label: string
}

/** Time of the practice, or of the ball that is being played, as it runs. */
export function RunningClock({ state, now, since = 0, label }: RunningClockProps) {
  const { beganAt, endedAt } = state
  const read = useCallback(
    () => secondNow({ beganAt }, endedAt ?? now()) - since,
    [beganAt, endedAt, now, since],
  )
  const second = useSecond(read, state.status === 'running')
  return (
    <span role="timer" aria-label={label} className="font-bold tabular-nums">
      {clockWords(second)}
    </span>
  )
}
