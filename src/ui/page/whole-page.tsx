import type { ReactNode } from 'react'

/** A page without the book's header: nothing of the club is known or shown. */
export function WholePage({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <main id="content" className="mx-auto max-w-2xl px-4 py-12">
      <h1 className="text-2xl font-semibold tracking-tight">{title}</h1>
      <div className="mt-4 space-y-4">{children}</div>
    </main>
  )
}
