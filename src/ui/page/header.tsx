import type { ReactNode } from 'react'
import type { ViewerRole } from '#access/viewer'
import type { Squad, SquadId } from '#squad/squad'
import { PageLink } from '#ui/page/page-link'
import { SquadSwitcher } from '#ui/page/squad-switcher'
import { Tabs } from '#ui/page/tabs'
import type { TabName } from '#ui/paths'
import { paths } from '#ui/paths'
import { words } from '#ui/words'

/** What surrounds every page: whose club it is, who is looking, and where they may go. */
export type PageFrame = {
  readonly clubName: string
  readonly viewerName: string
  readonly viewerRole: ViewerRole
  /** Squads the viewer may open, in age order. */
  readonly squads: readonly Squad[]
  /** The squad the page is about; on a club's page the one the tabs lead back to. */
  readonly squadId: SquadId | null
  /** Tabs the viewer may open. */
  readonly tabs: readonly TabName[]
  /** The viewer's own children. */
  readonly children: readonly { readonly id: string; readonly name: string }[]
  /** Way out: a form or link of the app's. */
  readonly account?: ReactNode
}

export function Header({ frame, tab }: { readonly frame: PageFrame; readonly tab: TabName | null }) {
  return (
    <header className="no-print mx-auto max-w-7xl px-4 pt-3 sm:px-6">
      <div className="flex flex-wrap items-center justify-between gap-x-6 gap-y-1">
        <p className="flex flex-wrap items-center gap-x-3">
          <PageLink
            href={paths.start()}
            className="tap inline-flex items-center font-semibold text-ink no-underline"
          >
            Turnbook
          </PageLink>
          <span className="text-soft">{frame.clubName}</span>
        </p>
        <SquadSwitcher squads={frame.squads} squadId={frame.squadId} tab={tab} />
        <div className="flex flex-wrap items-center gap-x-3 text-sm text-soft">
          <span>
            {frame.viewerName}, {words.viewerRole[frame.viewerRole]}
          </span>
          {frame.children.map(({ id, name }) => (
            <a key={id} href={paths.family(id)} className="tap inline-flex items-center">
              Your child: {name}
            </a>
          ))}
          <a href={paths.account()} className="tap inline-flex items-center">
            Your sign-in
          </a>
          {frame.account}
        </div>
      </div>
      <Tabs tabs={frame.tabs} current={tab} squadId={frame.squadId} />
    </header>
  )
}
