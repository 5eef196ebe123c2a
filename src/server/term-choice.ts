import 'server-only'
import type { Day } from '#common/time'
import type { Season, SeasonId, Term } from '#squad/squad'
import { termNow } from '#squad/term-now'

export type TermOfSeason = Term & { readonly seasonId: SeasonId; readonly seasonName: string }

/** The terms that have begun, the one looked at, and the one before it. */
export type TermChoice = {
  readonly begun: readonly TermOfSeason[]
  readonly term: TermOfSeason | null
  readonly before: TermOfSeason | null
}

/** The term an address asks for, else the one that runs or ran last. `seasons` in order of time. */
export function chooseTerm(
  seasons: readonly Season[],
  { asked, today }: { readonly asked: string | string[] | undefined; readonly today: Day },
): TermChoice {
  const terms = seasons.flatMap(({ id, name, terms }) =>
    terms.map((term) => ({ ...term, seasonId: id, seasonName: name })),
  )
  const begun = terms.filter(({ firstDay }) => firstDay <= today)
  const now = termNow(begun, today)
  const term = begun.find(({ id }) => id === asked) ?? begun.find(({ id }) => id === now?.id) ?? null
  const before = term ? (begun[begun.indexOf(term) - 1] ?? null) : null
  return { begun, term, before }
}
