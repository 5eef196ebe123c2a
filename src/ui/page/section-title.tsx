import type { ReactNode } from 'react'

type SectionTitleProps = {
  readonly id?: string
  readonly children: ReactNode
  /** What the section shows, in a sentence. */
  readonly note?: ReactNode
}

export function SectionTitle({ id, children, note }: SectionTitleProps) {
  return (
    <div className="mb-3">
      <h2 id={id} className="text-lg font-semibold">
        {children}
      </h2>
      {note ? <p className="max-w-prose text-sm text-soft">{note}</p> : null}
    </div>
  )
}
