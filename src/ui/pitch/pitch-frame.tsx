import type { ReactNode } from 'react'
import { formatDay } from '#ui/format-day'
import { PitchHeader, type PitchHeaderProps } from '#ui/pitch/pitch-header'

type PitchFrameProps = Omit<PitchHeaderProps, 'title'> & {
  readonly session: { readonly title: string; readonly squadName: string; readonly day: string }
  readonly children: ReactNode
}

/** Screens of one session under its name; in a phone laid flat, beside what the thumb needs. */
export function PitchFrame({ session, children, ...header }: PitchFrameProps) {
  return (
    <div className="flex min-h-dvh flex-col flat:grid flat:grid-cols-[1fr_17rem] flat:grid-rows-[auto_1fr]">
      <PitchHeader
        title={`${session.title || session.squadName}, ${formatDay(session.day, 'short')}`}
        {...header}
      />
      {children}
    </div>
  )
}
