import type { ReactNode } from 'react'
import { paths } from '#ui/paths'

type FamilyFrameProps = {
  readonly clubName: string
  readonly viewerName: string
  readonly title: string
  readonly lead: string
  /** The viewer's other children. */
  readonly others: readonly { readonly id: string; readonly name: string }[]
  /** The way out: a plain form, so that the page needs no script. */
  readonly wayOut: ReactNode
  readonly children: ReactNode
}

/** What surrounds a page for a family: plain links only, for nothing here needs a script. */
export function FamilyFrame(props: FamilyFrameProps) {
  const link = 'tap inline-flex items-center'
  return (
    <>
      <a
        href="#content"
        className="sr-only bg-leaf focus:not-sr-only focus:absolute focus:z-20 focus:m-2 focus:p-3"
      >
        Skip to the page
      </a>
      <header className="no-print mx-auto max-w-4xl px-4 pt-3 sm:px-6">
        <div className="flex flex-wrap items-center justify-between gap-x-6 gap-y-1">
          <p className="flex flex-wrap items-center gap-x-3">
            <a href={paths.start()} className={`${link} font-semibold text-ink no-underline`}>
              Turnbook
            </a>
            <span className="text-soft">{props.clubName}</span>
          </p>
          <div className="flex flex-wrap items-center gap-x-4 text-sm text-soft">
            <span>{props.viewerName}</span>
            <a href={paths.account()} className={link}>
              Your sign-in
            </a>
            {props.wayOut}
          </div>
        </div>
        {props.others.length > 0 ? (
          <nav aria-label="Your other children" className="flex flex-wrap gap-x-4">
            {props.others.map(({ id, name }) => (
              <a key={id} href={paths.family(id)} className={link}>
                {name}
              </a>
            ))}
          </nav>
        ) : null}
      </header>
      <main id="content" className="mx-auto max-w-4xl px-0 pb-16 sm:px-6">
        <div className="family-page ledger-page px-4 py-6 sm:px-8 lg:pl-[3.25rem]">
          <h1 className="text-2xl font-semibold tracking-tight text-balance">{props.title}</h1>
          <p className="mt-1 max-w-prose text-soft">{props.lead}</p>
          <div className="mt-5 space-y-6">{props.children}</div>
        </div>
      </main>
    </>
  )
}
