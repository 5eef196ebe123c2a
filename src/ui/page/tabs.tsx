import type { SquadId } from '#squad/squad'
import { PageLink } from '#ui/page/page-link'
import { isTabOfClub, pathOfTab, type TabName } from '#ui/paths'
import { words } from '#ui/words'

type TabsProps = {
  readonly tabs: readonly TabName[]
  readonly current: TabName | null
  /** Null: the club has no squad to open yet, and only the club's own sections are there. */
  readonly squadId: SquadId | null
}

/** The sections of the book. They wrap on a phone, so that none is out of sight. */
export function Tabs({ tabs, current, squadId }: TabsProps) {
  const open = squadId === null ? tabs.filter(isTabOfClub) : tabs
  if (open.length === 0) return null
  return (
    <nav aria-label="Sections of the book" className="mt-1">
      <ul className="flex flex-wrap gap-x-1">
        {open.map((tab) => (
          <li key={tab}>
            <PageLink
              href={pathOfTab(tab, squadId)}
              aria-current={tab === current ? 'page' : undefined}
              className="tap inline-flex items-center border-b-[3px] border-transparent px-2 text-ink no-underline hover:border-rule-strong aria-[current]:border-accent aria-[current]:font-semibold aria-[current]:text-accent sm:px-3"
            >
              {words.tab[tab]}
            </PageLink>
          </li>
        ))}
      </ul>
    </nav>
  )
}
