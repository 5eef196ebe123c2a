'use client'

import { buttonLook } from '#ui/page/button-look'
import { WholePage } from '#ui/page/whole-page'
import { WholePageLinkButton } from '#ui/page/whole-page-link-button'
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
        <button type="button" onClick={retry} className={buttonLook('main')}>
          Try again
        </button>
        <WholePageLinkButton href={paths.start()}>To the first page</WholePageLinkButton>
      </p>
      {digest ? (
        <p className="text-sm text-soft">For whoever looks after this installation: fault {digest}.</p>
      ) : null}
    </WholePage>
  )
}
