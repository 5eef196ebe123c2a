'use client'

import type { Seconds } from '#common/time'
import { clockWords } from '#ui/pitch/clock-words'
import { useSecond } from '#ui/pitch/use-second'

type BigClockProps = {
  /** The second of the running period. */
  readonly read: () => Seconds
  readonly isRunning: boolean
  /** How long the period is meant to be. */
  readonly length: Seconds
  readonly name: string
  /** What to know beside the clock: that it stands. */
  readonly note: string | null
}

/** The clock of a match, to be read at arm's length; beyond its length a period says by how much. */
export function BigClock({ read, isRunning, length, name, note }: BigClockProps) {
  const second = useSecond(read, isRunning)
  const over = Math.floor(second) - length
  return (
    <section aria-label="Clock" className="text-center leading-none">
      <p className="text-lg font-semibold">
        {name}
        {note ? <strong className="ml-2 bg-ink px-2 py-0.5 text-white">{note}</strong> : null}
      </p>
      <p>
        <span role="timer" aria-label="Time of the period" className="text-[5rem] font-bold tabular-nums">
          {clockWords(second)}
        </span>
      </p>
      {over > 0 ? (
        <p className="text-xl font-bold tabular-nums">
          +{clockWords(over)} beyond {clockWords(length)}
        </p>
      ) : null}
    </section>
  )
}
