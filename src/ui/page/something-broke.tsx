'use client'

import { Button, LinkButton } from '#ui/page/button'
import { WholePage } from '#ui/page/whole-page'
import { paths } from '#ui/paths'

type SomethingBrokeProps = {
  /** Found again in the server's log under the same number. */
  readonly digest?: string
  readonly retry: () => void
}

export function SomethingBroke({ digest, retry }: SomethingBrokeProps) {
  return (
    <WholePage title="This page could not be shown">
      <p>Something went wrong here. Nothing that is written in the book was changed by it.</p>
      <p className="flex flex-wrap gap-3">
        <Button type="button" onClick={retry}>
          Try again
        </Button>
        <LinkButton href={paths.start()}>To the first page</LinkButton>
      </p>
      {digest ? (
        <p className="text-sm text-soft">For whoever looks after this installation: fault {digest}.</p>
      ) : null}
    </WholePage>
  )
}
