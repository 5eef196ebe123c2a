import type { ReactNode } from 'react'

/** Nothing here yet: says so, and what would fill it. */
export function Empty({ children, next }: { readonly children: ReactNode; readonly next?: ReactNode }) {
  return (
    <div className="border border-dashed border-rule-strong px-4 py-6 text-soft">
      <p className="max-w-prose">{children}</p>
      {next ? <div className="mt-3">{next}</div> : null}
    </div>
  )
}
