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
      <div className="flex gap-2">
        <PitchButton className="shrink-0" weight={clockStands ? 'main' : 'plain'} onClick={props.onClock}>
          {clockStands ? 'Clock goes on' : 'Clock stops'}
        </PitchButton>
        <PitchButton
          className="min-w-0 flex-1 text-xl"
          weight={clockStands ? 'plain' : 'main'}
          onClick={props.onPeriodEnd}
        >
          Whistle: end of {periodName}
        </PitchButton>
      </div>
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
