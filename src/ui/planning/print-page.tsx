import type { ReactNode } from 'react'
import { PrintButton } from '#ui/planning/print-button'

type PrintPageProps = {
  /** Beside the button that prints; not on paper. */
  readonly links: ReactNode
  readonly children: ReactNode
}

/** What goes on paper alone, with a way to print it and the ways on. */
export function PrintPage({ links, children }: PrintPageProps) {
  return (
    <main id="content" className="mx-auto max-w-4xl bg-white p-4 print:p-0">
      <p className="no-print mb-4 flex flex-wrap items-center gap-3">
        <PrintButton />
        {links}
      </p>
      {children}
    </main>
  )
}
