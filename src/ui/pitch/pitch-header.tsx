import type { ReactNode } from 'react'
import { type OfflinePages, offlineSentence, type Saved, savedLine } from '#ui/pitch/saved-line'

export type PitchHeaderProps = {
  readonly title: string
  readonly saved: Saved
  readonly pages: OfflinePages
  /** The clock, where it is to be seen on every screen. */
  readonly clock: ReactNode
}

/** What it is, and what is saved where: always in sight. */
export function PitchHeader({ title, saved, pages, clock }: PitchHeaderProps) {
  const sentence = offlineSentence(pages)
  return (
    <header className="sticky top-0 z-10 border-b-2 border-ink bg-leaf px-3 pt-[max(0.25rem,env(safe-area-inset-top))] pb-1 flat:col-start-1">
      <div className="flex items-baseline justify-between gap-3">
        <h1 className="min-w-0 truncate text-lg font-bold">{title}</h1>
        {clock ? <span className="text-2xl">{clock}</span> : null}
      </div>
      <p role="status" className="text-base leading-tight tabular-nums">
        {savedLine(saved)}
      </p>
      {sentence ? <p className="text-base leading-tight font-semibold">{sentence}</p> : null}
    </header>
  )
}
