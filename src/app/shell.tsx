import type { ComponentProps } from 'react'
import { leave } from '#server/sign-in-actions'
import { Page } from '#ui/page/page'

/** A page of the book with the way out in its header. */
export function Shell({ frame, ...rest }: ComponentProps<typeof Page>) {
  const account = (
    <form action={leave}>
      <button type="submit" className="tap cursor-pointer text-accent underline underline-offset-4">
        Sign out
      </button>
    </form>
  )
  return <Page frame={{ ...frame, account }} {...rest} />
}
