import type { ReactNode } from 'react'

type DetailsProps = { readonly summary: ReactNode; readonly isOpen?: boolean; readonly children: ReactNode }

/** More for those who want it. */
export function Details({ summary, isOpen = false, children }: DetailsProps) {
  return (
    <details open={isOpen} className="border-y border-rule">
      <summary className="tap py-2.5 font-medium text-accent underline decoration-1 underline-offset-4">
        {summary}
      </summary>
      <div className="pb-4">{children}</div>
    </details>
  )
}
