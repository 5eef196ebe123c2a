'use client'

import type { PitchState } from '#pitch/pitch-state'
import type { UpcomingRound } from '#pitch/upcoming'
import type { Cast } from '#ui/pitch/cast'
import type { OnDeeds } from '#ui/pitch/on-deeds'
import { PitchButton } from '#ui/pitch/pitch-button'
import { roundDoneDeeds } from '#ui/pitch/round-choices'
import { Sheet } from '#ui/pitch/sheet'

type StopSheetProps = {
  readonly state: PitchState
  readonly cast: Cast
  readonly round: UpcomingRound
  readonly onDeeds: OnDeeds
  readonly onClose: () => void
}

/** Stopping in a round that nobody has tapped yet: how much of it was played. */
export function StopSheet({ state, cast, round, onDeeds, onClose }: StopSheetProps) {
  const stop = (balls: number) => {
    onDeeds([...(balls > 0 ? roundDoneDeeds(state, { round, balls, cast }) : []), { kind: 'stop' }])
    onClose()
  }
  return (
    <Sheet title="Stop here" onClose={onClose}>
      <p className="font-semibold">
        How many {round.design?.isFreeGame ? 'halves' : 'balls'} of round {round.round + 1} were played?
      </p>
      <div className="grid grid-cols-4 gap-2">
        {[0, ...round.turns.map((_, index) => index + 1)].map((balls) => (
          <PitchButton key={balls} className="text-2xl" onClick={() => stop(balls)}>
            {balls === 0 ? 'None' : balls}
          </PitchButton>
        ))}
      </div>
    </Sheet>
  )
}
