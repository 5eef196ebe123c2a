'use client'

import { type ReactNode, useEffect } from 'react'

type PitchFooterProps = {
  readonly undo: ReactNode
  /** The way to stop, beside the way back. */
  readonly stop?: ReactNode
  readonly tabs: ReactNode
  readonly children: ReactNode
}

/** What the thumb needs, always at the lower edge; in a phone laid flat, at the right. */
export function PitchFooter({ undo, stop, tabs, children }: PitchFooterProps) {
  return (
    <footer className="sticky bottom-0 z-10 border-t-2 border-ink bg-leaf px-3 pt-2 pb-[max(0.5rem,env(safe-area-inset-bottom))] flat:top-0 flat:col-start-2 flat:row-span-2 flat:row-start-1 flat:h-dvh flat:overflow-y-auto flat:border-t-0 flat:border-l-2">
      <div className="mx-auto max-w-3xl space-y-2">
        <div className="flex gap-2 empty:hidden flat:flex-col">
          {undo}
          {stop}
        </div>
        {children}
        {tabs}
      </div>
    </footer>
  )
}

/** What is read; it begins at its top again whenever something else comes on it (`about`). */
export function PitchMain({ about, children }: { readonly about: string; readonly children: ReactNode }) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it is about is what moves it
  useEffect(() => {
    window.scrollTo(0, 0)
  }, [about])
  return (
    <main id="content" className="mx-auto w-full max-w-3xl flex-1 space-y-4 px-3 py-3 flat:col-start-1">
      {children}
    </main>
  )
}
