'use client'

import { PitchButton } from '#ui/pitch/pitch-button'

type MatchActionsProps = {
  readonly status: 'notBegun' | 'running' | 'atBreak' | 'ended'
  /** "First half": of the running period, or of the next. */
  readonly periodName: string
  /** Nothing that was meant to be played is left after this. */
  readonly isLast: boolean
  readonly clockStands: boolean
  /** How many will be on. */
  readonly count: number
  readonly onKickOff: () => void
  readonly onPeriodEnd: () => void
  readonly onClock: () => void
  readonly onFullTime: () => void
}

/** The one thing to tap now. */
export function MatchActions(props: MatchActionsProps) {
  const { status, periodName, isLast, clockStands, count } = props
  if (status === 'ended') return null
  if (status === 'running')
    return (
      <>
        <PitchButton
          className="w-24 shrink-0 px-1 text-base flat:w-full"
          weight={clockStands ? 'main' : 'plain'}
          onClick={props.onClock}
        >
          {clockStands ? 'Clock goes on' : 'Clock stops'}
        </PitchButton>
        <PitchButton
          className="w-24 shrink-0 px-1 text-base flat:w-full"
          weight="main"
          aria-label={`Whistle: end of ${periodName}`}
          onClick={props.onPeriodEnd}
        >
          Whistle
        </PitchButton>
      </>
    )
  const kickOff = (
    <PitchButton
      weight={isLast && status === 'atBreak' ? 'plain' : 'main'}
      className="w-full text-2xl"
      disabled={count === 0}
      onClick={props.onKickOff}
    >
      {isLast && status === 'atBreak' ? 'Kick off an extra period' : `Kick off ${periodName}, ${count} on`}
    </PitchButton>
  )
  if (status === 'notBegun') return kickOff
  return (
    <div className="space-y-2">
      {isLast ? (
        <PitchButton weight="main" className="w-full text-2xl" onClick={props.onFullTime}>
          Full time
        </PitchButton>
      ) : null}
      {kickOff}
      {isLast ? null : (
        <PitchButton weight="quiet" className="w-full" onClick={props.onFullTime}>
          Full time already
        </PitchButton>
      )}
    </div>
  )
}
