import type { Squad, SquadId } from '#squad/squad'
import { PageLink } from '#ui/page/page-link'
import { isTabOfClub, pathOfTab, type TabName } from '#ui/paths'

type SquadSwitcherProps = {
  readonly squads: readonly Squad[]
  readonly squadId: SquadId | null
  readonly tab: TabName | null
}

/** The squad the page is about; opens into the same page of the viewer's other squads. */
export function SquadSwitcher({ squads, squadId, tab }: SquadSwitcherProps) {
  const current = squads.find((squad) => squad.id === squadId)
  if (squads.length === 0) return null
  if (squads.length === 1 && current)
    return <p className="tap flex items-center font-medium">{current.name}</p>
  const target: TabName = tab && !isTabOfClub(tab) ? tab : 'today'
  return (
    // The key closes the list again once another squad has been opened.
    <details className="relative" key={`${squadId} ${tab}`}>
      <summary className="tap flex items-center gap-2 border border-rule-strong bg-leaf px-3 font-medium">
        <span className="sr-only">Squad: </span>
        {current?.name ?? 'Squads'}
        <span aria-hidden="true">▾</span>
      </summary>
      <ul className="absolute z-10 mt-1 min-w-full border border-rule-strong bg-leaf shadow-sm">
        {squads.map((squad) => (
          <li key={squad.id} className="border-b border-rule last:border-b-0">
            <PageLink
              href={pathOfTab(target, squad.id)}
              aria-current={squad.id === squadId ? 'true' : undefined}
              className="tap flex items-center whitespace-nowrap px-3 no-underline aria-[current]:font-semibold"
            >
              {squad.name}
            </PageLink>
          </li>
        ))}
      </ul>
    </details>
  )
}
