'use client'

import { useCallback } from 'react'
import type { Seconds } from '#common/time'
import type { PlayerId } from '#squad/player'
import { clockWords } from '#ui/pitch/clock-words'
import { PitchButton } from '#ui/pitch/pitch-button'
import { useSecond } from '#ui/pitch/use-second'
import { ChangeLines, type ChangeNames } from '#ui/touchline/change-lines'
import { useAlarm } from '#ui/touchline/use-alarm'

type CallCardProps = {
  readonly change: ChangeNames
  /** What tells this change from others. */
  readonly id: string
  /** When it is due, as the clock of its period shows it. */
  readonly at: string
  /** Seconds to go; negative once it is due. */
  readonly read: () => Seconds
  readonly isRunning: boolean
  readonly nameOf: (id: PlayerId) => string
  readonly onDone: () => void
  readonly onDrop: () => void
}

/** From so long before on it is time to get ready. In seconds. */
const soon = 60

/** The next change: who, where, when. It grows loud when it is due, and needs no tap when it was made then. */
export function CallCard({ change, id, at, read, isRunning, nameOf, onDone, onDrop }: CallCardProps) {
  // In whole seconds, so that it shows one less as the clock shows one more.
  const toGo = useSecond(
    useCallback(() => Math.ceil(read()), [read]),
    isRunning,
  )
  const isDue = toGo <= 0
  useAlarm(isDue ? `${id} due` : toGo <= soon ? `${id} soon` : null)
  return (
    <section
      aria-label="Next change"
      className={`space-y-3 border-4 border-ink p-3 ${isDue ? 'bg-ink text-white' : 'bg-leaf'}`}
    >
      <p className="flex items-baseline justify-between gap-3 text-xl font-bold tabular-nums">
        <span>Change at {at}</span>
        <span role={isDue ? 'alert' : undefined} className="text-2xl">
          {isDue ? 'NOW' : `in ${clockWords(toGo)}`}
        </span>
      </p>
      <ChangeLines change={change} nameOf={nameOf} />
      <div className="grid grid-cols-2 gap-2">
        <PitchButton weight={isDue ? 'plain' : 'main'} className="text-2xl" onClick={onDone}>
          Done
        </PitchButton>
        <PitchButton className="text-xl" onClick={onDrop}>
          Not now
        </PitchButton>
      </div>
    </section>
  )
}
