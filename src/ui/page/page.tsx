import type { ReactNode } from 'react'
import { RolePatterns } from '#ui/figures/role-patterns'
import { Header, type PageFrame } from '#ui/page/header'
import type { TabName } from '#ui/paths'

type PageProps = {
  readonly frame: PageFrame
  /** The tab this page belongs to; null for pages outside the tabs. */
  readonly tab: TabName | null
  readonly title: string
  /** A line under the title: what the page rests on. */
  readonly lead?: ReactNode
  readonly outdoors?: boolean
  readonly children: ReactNode
}

/** Every page of the book: skip link, header, one heading, one main landmark. */
export function Page({ frame, tab, title, lead, outdoors = false, children }: PageProps) {
  return (
    <div className={outdoors ? 'outdoors' : undefined}>
      <a
        href="#content"
        className="sr-only bg-leaf focus:not-sr-only focus:absolute focus:z-20 focus:m-2 focus:p-3"
      >
        Skip to the page
      </a>
      <RolePatterns />
      <Header frame={frame} tab={tab} />
      <main id="content" className="mx-auto max-w-7xl px-0 pb-16 sm:px-6">
        <div className="ledger-page px-4 py-6 sm:px-8 lg:pl-[3.25rem]">
          <h1 className="text-2xl font-semibold tracking-tight text-balance">{title}</h1>
          {lead ? <div className="mt-1 max-w-prose text-soft">{lead}</div> : null}
          <div className="mt-6 space-y-10">{children}</div>
        </div>
      </main>
    </div>
  )
}
