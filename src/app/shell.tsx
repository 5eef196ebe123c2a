import type { ComponentProps } from 'react'
import { LeaveForm } from '#app/leave-form'
import { Page } from '#ui/page/page'

/** A page of the book with the way out in its header. */
export function Shell({ frame, ...rest }: ComponentProps<typeof Page>) {
  return <Page frame={{ ...frame, account: <LeaveForm /> }} {...rest} />
}
