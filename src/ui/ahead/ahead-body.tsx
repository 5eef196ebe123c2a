import type { ReactNode } from 'react'
import type { Squad, Term } from '#squad/squad'
import type { AheadTerm } from '#ui/ahead/ahead-types'
import { LinkButton } from '#ui/page/button'
import { Choice } from '#ui/page/choice'
import { Empty } from '#ui/page/empty'
import { paths, withChoices } from '#ui/paths'
import { words } from '#ui/words'

type AheadBodyProps = {
  readonly squad: Squad
  /** Those that are not over. */
  readonly terms: readonly Term[]
  readonly term: AheadTerm | null
  readonly children: ReactNode
}

/** What surrounds the plan: the terms to choose from, and what is missing where there is nothing to plan. */
export function AheadBody({ squad, terms, term, children }: AheadBodyProps) {
  return (
    <>
      {terms.length > 1 ? (
        <Choice
          label="Term"
          options={terms.map(({ id, name }) => ({
            label: name,
            href: withChoices(paths.ahead(squad.id), { term: id }),
            isChosen: id === term?.id,
          }))}
        />
      ) : null}
      {term === null ? (
        <Empty>No term runs or is to come. The club’s seasons and terms stand under {words.tab.club}.</Empty>
      ) : null}
      {term && term.request.practices.length === 0 ? (
        <Empty next={<LinkButton href={paths.newSession(squad.id)}>Enter a practice</LinkButton>}>
          No practice of {term.name} is still to come. Once one is entered, it is planned here.
        </Empty>
      ) : null}
      {term && term.request.practices.length > 0 && term.request.designs.length === 0 ? (
        <Empty next={<LinkButton href={paths.designs(squad.id)}>Designs</LinkButton>}>
          The club has no designs yet. A practice is planned as a theme met by a design.
        </Empty>
      ) : null}
      {term && term.request.practices.length > 0 && term.request.programme.length === 0 ? (
        <Empty next={<LinkButton href={paths.themes(squad.id)}>{words.tab.themes}</LinkButton>}>
          {term.name} has no programme yet, so any theme may come at any time. What you wish for is written
          under {words.tab.themes}.
        </Empty>
      ) : null}
      {term && term.request.practices.length > 0 && term.request.designs.length > 0 ? children : null}
    </>
  )
}
