import type { ReactNode } from 'react'

type PitchFooterProps = { readonly undo: ReactNode; readonly tabs: ReactNode; readonly children: ReactNode }

/** What the thumb needs, always at the lower edge; in a phone laid flat, at the right. */
export function PitchFooter({ undo, tabs, children }: PitchFooterProps) {
  return (
    <footer className="sticky bottom-0 z-10 border-t-2 border-ink bg-leaf px-3 pt-2 pb-[max(0.5rem,env(safe-area-inset-bottom))] flat:top-0 flat:col-start-2 flat:row-span-2 flat:row-start-1 flat:h-dvh flat:overflow-y-auto flat:border-t-0 flat:border-l-2">
      <div className="mx-auto max-w-3xl space-y-2">
        {undo}
        {children}
        {tabs}
      </div>
    </footer>
  )
}
