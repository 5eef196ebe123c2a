'use client'

import { useLinkStatus } from 'next/link'

/** A line at the top of the screen from the tap on a link until its page is there. */
export function LinkPending() {
  const { pending } = useLinkStatus()
  return pending ? (
    <span role="status" className="page-pending">
      <span className="sr-only">Loading</span>
    </span>
  ) : null
}
