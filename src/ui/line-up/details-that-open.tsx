'use client'

import { type ReactNode, useEffect, useState } from 'react'

/** More for those who want it, opened where something in it is wrong; what the coach opened is never closed by itself. */
export function DetailsThatOpen({
  summary,
  mustOpen,
  children,
}: {
  readonly summary: ReactNode
  readonly mustOpen: boolean
  readonly children: ReactNode
}) {
  const [isOpen, setOpen] = useState(mustOpen)
  useEffect(() => {
    if (mustOpen) setOpen(true)
  }, [mustOpen])
  return (
    <details
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      className="border-y border-rule"
    >
      <summary className="tap py-2.5 font-medium text-accent underline decoration-1 underline-offset-4">
        {summary}
      </summary>
      <div className="pb-4">{children}</div>
    </details>
  )
}
